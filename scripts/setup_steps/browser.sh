# A Chromium for the browser tests: one that is here, or one we can install.

browser_here() {
  local name
  [ -n "${CHROMIUM:-}" ] && [ -x "$CHROMIUM" ] && return 0
  for name in chromium chromium-browser google-chrome; do
    command -v "$name" >/dev/null 2>&1 && return 0
  done
  [ -x "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome" ] && return 0
  [ -x "/Applications/Chromium.app/Contents/MacOS/Chromium" ] && return 0
  [ -f .cache/chromium-from-playwright ]
}

find_browser() {
  if browser_here; then return; fi
  if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null 2>&1; then
    say "installing Chromium with apt-get"
    if apt_install chromium; then return; fi
  fi
  say "asking Playwright for a Chromium"
  if "$VENV/bin/python" -m playwright install chromium </dev/null >&2; then
    touch .cache/chromium-from-playwright
  else
    say "no Chromium: the browser tests will fail. Install Chromium or Chrome," \
      "or name it: CHROMIUM=/path/to/chromium"
  fi
}

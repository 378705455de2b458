# Find a Python that really runs, and keep an environment with the pinned packages.

VENV=.venv
REQUIREMENTS=scripts/requirements.txt
OLDEST="3, 11" # the oldest that the pinned packages run on

# Shims and stubs may lie about what they are, so each candidate is run.
runs() {
  "$1" -c "import sys, venv, ensurepip; sys.exit(sys.version_info < ($OLDEST))" \
    </dev/null >/dev/null 2>&1
}

python_candidates() {
  [ -n "${PYTHON:-}" ] && printf '%s\n' "$PYTHON"
  printf '%s\n' python3.13 python3.12 python3.14
  ls -1 "${PYENV_ROOT:-$HOME/.pyenv}"/versions/*/bin/python 2>/dev/null | sort -r || true
  ls -1 /opt/homebrew/bin/python3.1[1-9] /usr/local/bin/python3.1[1-9] 2>/dev/null || true
  printf '%s\n' python3 python3.11
}

find_python() {
  local candidate
  while IFS= read -r candidate; do
    if runs "$candidate"; then printf '%s\n' "$candidate"; return 0; fi
  done < <(python_candidates)
  python_from_uv
}

# uv can bring a Python where none is new enough; it needs the open internet.
python_from_uv() {
  local uv=uv
  if ! command -v uv >/dev/null 2>&1; then
    say "no Python 3.11 or newer here: trying to bring one with uv"
    python3 -m venv .cache/uv >&2 && .cache/uv/bin/pip install -q uv >&2 || return 1
    uv=.cache/uv/bin/uv
  fi
  "$uv" python find '>=3.11' 2>/dev/null && return 0
  "$uv" python install 3.13 >&2 && "$uv" python find 3.13
}

make_environment() {
  local wanted python
  wanted=$(fingerprint "$REQUIREMENTS" scripts/setup_steps/python.sh)
  if is_fresh "$VENV/stamp" "$wanted" && runs "$VENV/bin/python"; then return; fi
  if ! runs "$VENV/bin/python"; then
    python=$(find_python) || stop "found no Python 3.11 or newer. Install one, or name it:" \
      "PYTHON=/path/to/python scripts/setup"
    say "making $VENV with $("$python" --version)"
    rm -rf "$VENV"
    "$python" -m venv "$VENV"
  fi
  say "installing the pinned Python packages (a minute or two the first time)"
  "$VENV/bin/python" -m pip install -qq --disable-pip-version-check -r "$REQUIREMENTS" \
    </dev/null >&2 || stop "pip could not install $REQUIREMENTS: see above"
  printf '%s' "$wanted" >"$VENV/stamp"
}

# Find a Python that really runs, and keep an environment with the pinned packages.

VENV=.venv
REQUIREMENTS=scripts/requirements.txt
OLDEST="3, 11" # the oldest that the pinned packages run on
NEW_ENOUGH="import sys, venv, ensurepip; sys.exit(sys.version_info < ($OLDEST))"

python_candidates() {
  [ -n "${PYTHON:-}" ] && printf '%s\n' "$PYTHON"
  printf '%s\n' python3.13 python3.12 python3.14
  ls -1 "${PYENV_ROOT:-${HOME:-}/.pyenv}"/versions/*/bin/python 2>/dev/null | sort -r || true
  ls -1 /opt/homebrew/bin/python3.1[1-9] /usr/local/bin/python3.1[1-9] 2>/dev/null || true
  printf '%s\n' python3 python3.11 /usr/bin/python3
}

# The first candidate that runs this code; shims and stubs may lie about what they are.
first_python() {
  local candidate
  while IFS= read -r candidate; do
    if "$candidate" -c "$1" </dev/null >/dev/null 2>&1; then
      printf '%s\n' "$candidate"
      return 0
    fi
  done < <(python_candidates)
  return 1
}

find_python() {
  first_python "$NEW_ENOUGH" || python_from_debian || python_from_uv
}

# Debian's python3 comes without venv and ensurepip.
python_from_debian() {
  if [ "$(id -u)" != 0 ] || ! command -v apt-get >/dev/null 2>&1; then return 1; fi
  say "no Python 3.11 or newer with venv here: installing python3-venv with apt-get"
  apt_install python3-venv && first_python "$NEW_ENOUGH"
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

# Whether .venv is of the Python that PYTHON names; true where it names none.
of_wanted_python() {
  local tell='import sys; print(sys.version)'
  if [ -n "${PYTHON:-}" ] && ! "$PYTHON" -c "$NEW_ENOUGH" 2>/dev/null; then
    stop "PYTHON=$PYTHON is no Python 3.11 or newer that runs and has venv"
  fi
  [ -z "${PYTHON:-}" ] || [ "$("$PYTHON" -c "$tell")" = "$("$VENV/bin/python" -c "$tell" 2>/dev/null)" ]
}

install_pinned() {
  "$VENV/bin/python" -m pip install -qq --disable-pip-version-check --require-hashes -r "$1" \
    </dev/null >&2
}

# The stamp is written last: an environment without it was never finished, whatever it holds,
# and is made anew.
make_environment() {
  local wanted python
  wanted=$(fingerprint "$REQUIREMENTS" scripts/setup_steps/python.sh)
  if of_wanted_python && is_fresh "$VENV/stamp" "$wanted" &&
    "$VENV/bin/python" -c "$NEW_ENOUGH" 2>/dev/null; then return; fi
  python=$(find_python) || stop "found no Python 3.11 or newer. Install one (on Debian with" \
    "python3-venv), or name it: PYTHON=/path/to/python scripts/setup"
  say "making $VENV with $("$python" --version)"
  rm -rf "$VENV"
  "$python" -m venv "$VENV"
  say "installing the pinned Python packages (a minute or two the first time)"
  install_pinned "$REQUIREMENTS" || stop "pip could not install $REQUIREMENTS: see above"
  printf '%s' "$wanted" >"$VENV/stamp"
}

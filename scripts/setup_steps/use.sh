# After setup: the environment's Python, and its node where one had to be put there because the
# machine has none that is new enough.
PATH="$PATH:$PWD/.venv/bin"
if [ -x .venv/bin/node ]; then PATH="$PWD/.venv/bin:$PATH"; fi
export PATH PYTHONPATH="$PWD"

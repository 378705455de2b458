# After setup: the environment's Python, and its node where the machine has none.
PATH="$PATH:$PWD/.venv/bin"
export PATH PYTHONPATH="$PWD"

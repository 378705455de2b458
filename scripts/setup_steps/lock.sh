# One set-up at a time. The lock is on an open file (flock), so the system frees it when the
# set-up and all it started have ended, however they ended: there are no stale locks.

LOCK=.cache/setup.lock
TAKE_LOCK='
import fcntl, sys
try:
    fcntl.flock(9, fcntl.LOCK_EX | fcntl.LOCK_NB)
except BlockingIOError:
    print("springline: another set-up is at work in this folder: waiting for it", file=sys.stderr)
    fcntl.flock(9, fcntl.LOCK_EX)
'

# Python takes the lock, since macOS has no such command; this shell goes on holding it.
hold_lock() {
  local python
  mkdir -p .cache
  exec 9>"$LOCK"
  python=$VENV/bin/python
  "$python" -I -S -c 'import fcntl' 2>/dev/null || python=$(first_python 'import fcntl') || python=false
  # -I -S: whatever another set-up is just now putting into .venv is not looked at
  if ! "$python" -I -S -c "$TAKE_LOCK" </dev/null; then
    say "this folder cannot be locked: let no two set-ups run at once"
  fi
}

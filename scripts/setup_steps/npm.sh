# The browser's parts (Pyodide, Vega and the like) from npm, by a committed lock.

PARTS=.cache/npm
NODE_REQUIREMENTS=scripts/requirements.node.txt # brings node and npm where there is none

# node and npm on the path are new enough, and run.
have_node() {
  node -e 'process.exit(+process.versions.node.split(".")[0] < 20 ? 1 : 0)' >/dev/null 2>&1 &&
    npm --version >/dev/null 2>&1
}

# Those of the environment come first where it holds some, here as in use.sh.
find_node() {
  . scripts/setup_steps/use.sh
  if have_node; then return; fi
  say "no node 20 or newer here: taking one from the Python registry"
  install_pinned "$NODE_REQUIREMENTS" || stop "pip could not install $NODE_REQUIREMENTS: see above"
  . scripts/setup_steps/use.sh
  have_node || stop "found no node. Install Node.js 20 or newer."
}

make_npm_parts() {
  local wanted
  find_node
  wanted=$(fingerprint scripts/npm/package.json scripts/npm/package-lock.json)
  if is_fresh "$PARTS/stamp" "$wanted"; then return; fi
  say "installing the pinned npm parts"
  rm -rf "$PARTS"
  mkdir -p "$PARTS"
  cp scripts/npm/package.json scripts/npm/package-lock.json "$PARTS/"
  (cd "$PARTS" && npm ci --ignore-scripts --no-audit --no-fund --no-update-notifier --loglevel=error </dev/null >&2) ||
    stop "npm could not install the lock in scripts/npm: see above"
  printf '%s' "$wanted" >"$PARTS/stamp"
}

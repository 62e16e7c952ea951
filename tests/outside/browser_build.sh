#!/usr/bin/env bash
# The desk of the pocket page answers a story byte for byte as the native one does.
#   browser_build.sh DESK.wasm STORY
set -euo pipefail
out=target/check/browser
mkdir -p "$out"
target/debug/examples/replay <"$2" >"$out/native.bin"
node tests/outside/browser_build.mjs "$1" "$2" "$out/browser.bin"
cmp "$out/native.bin" "$out/browser.bin"

#!/usr/bin/env bash
# The desk, compiled for the browser, answers a story byte for byte as the native one does.
#   browser_build.sh STORY
# Uses rustup's target where it is installed, else Debian's rustc-web with its own std sources.
set -euo pipefail
cd "$(dirname "$0")/../.."
story=$1
out=target/check/browser
mkdir -p "$out"
target=wasm32-unknown-unknown
export CARGO_INCREMENTAL=0
build=(build -q -p spinney-desk --example replay_in_the_browser --target "$target" --target-dir "$out/build" --profile browser)
if [ -d "$(rustc --print sysroot)/lib/rustlib/$target" ]; then
    cargo "${build[@]}"
else
    if ! [ -d /usr/lib/rustlib/src/rust/library ] && ! ls -d /usr/src/rustc-*/library >/dev/null 2>&1; then
        DEBIAN_FRONTEND=noninteractive apt-get install -y -qq rustc-web cargo-web rust-web-src lld >/dev/null
    fi
    linker=$(dirname "$(find "$(rustc --print sysroot)" -name rust-lld | head -1)")
    PATH="$linker:$PATH" RUSTC=/usr/bin/rustc RUSTC_BOOTSTRAP=1 \
        /usr/bin/cargo "${build[@]}" -Z build-std=std,panic_abort
fi
cargo run -q -p spinney-desk --example replay <"$story" >"$out/native.bin"
wasm=$(find "$out/build/$target/browser/examples" -name '*replay_in_the_browser.wasm' | head -1)
node tests/outside/browser_build.mjs "$wasm" "$story" "$out/browser.bin"
cmp "$out/native.bin" "$out/browser.bin"

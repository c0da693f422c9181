#!/usr/bin/env bash
# tests/PaperFlock.Benchmarks/others.sh FOLDER: installs what the benchmarks hold PaperFlock against. Nothing in the product, its tests or its build needs any of it.
set -euo pipefail
folder=${1:?usage: others.sh FOLDER}
mkdir -p "$folder"

# Typst's compiler for Node.js, which must be there already.
npm install --prefix "$folder" --no-package-lock --no-audit --no-fund @myriaddreamin/typst-ts-node-compiler@0.7.0

# Chromium, from Debian.
if ! command -v chromium >/dev/null; then
  as_root=()
  [ "$(id -u)" -eq 0 ] || as_root=(sudo)
  "${as_root[@]}" apt-get update -q
  "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -q -y --no-install-recommends chromium
fi

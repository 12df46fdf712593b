#!/usr/bin/env bash
# Makes a folder that holds Warmshelf and just the Java it needs, and packs it, for machines without Java. It runs on the kind of
# system and processor on which it was made.
#
#   mvn -q package -DskipTests && app/deploy/image.sh       then: tar xf target/warmshelf-*.tar.gz && warmshelf/bin/warmshelf demo
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
jar=target/warmshelf.jar
[ -f "$jar" ] || { echo "$jar is missing; make it with: mvn -q package -DskipTests" >&2; exit 2; }
command -v jlink >/dev/null || { echo "jlink is missing; it comes with a JDK of 17 or later." >&2; exit 2; }

# What the classes name, and what they reach only by asking for a service: elliptic curves for https and notices, names of
# machines, languages of dates, character sets of files sent in.
named=$(jdeps --multi-release 17 --ignore-missing-deps --print-module-deps "$jar")
asked=jdk.crypto.ec,jdk.naming.dns,jdk.localedata,jdk.charsets,jdk.zipfs

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
image=$work/warmshelf
jlink --add-modules "$named,$asked" --include-locales=en --strip-debug --no-header-files --no-man-pages --compress=2 --output "$image"
cp "$jar" "$image/lib/warmshelf.jar"
cp LICENSE "$image/"
cat >"$image/bin/warmshelf" <<'START'
#!/bin/sh
home=$(CDPATH= cd -- "$(dirname -- "$0")/.." && pwd)
exec "$home/bin/java" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -jar "$home/lib/warmshelf.jar" "$@"
START
chmod 755 "$image/bin/warmshelf"
pack=target/warmshelf-$(uname -s | tr '[:upper:]' '[:lower:]')-$(uname -m).tar.gz
tar -C "$work" -czf "$pack" warmshelf
echo "$pack: $(du -h "$pack" | cut -f1), unpacked $(du -sh "$image" | cut -f1)"

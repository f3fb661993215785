#!/bin/sh
# Stores the classes that some commands load in an archive for the JVM (class data sharing).
# Writes what it has to say to stdout and stderr; ends with 1 where there is no archive that works.
set -u

[ $# -eq 4 ] || {
  printf 'usage: store.sh JAVA CLASSPATH ARCHIVE PLAN\n' >&2
  exit 2
}
java=$1
classpath=$2
archive=$3
plan=$4

start() {
  "$java" -XX:+UseSerialGC "$@"
}

rm -f "$archive" "$archive".*
for arguments in check 'compile --as json' 'compile --as text'; do
  # shellcheck disable=SC2086 # two words are meant
  start -Xshare:off -XX:DumpLoadedClassList="$archive.one" -cp "$classpath" \
    gripwright.launcher.Launcher gripwright.tools.Main $arguments "$plan" >/dev/null 2>&1
  { cat "$archive.one" && echo END; } >>"$archive.all" 2>/dev/null
done
# A line that a run has several times stands for as many lambdas, so it is kept as often. Newer Javas
# number the classes of a run, and the numbers of two runs would clash.
awk '$0 == "END" { split("", here); next } { sub(/ id: [0-9]+$/, "") }
  ++here[$0] > seen[$0] { seen[$0]++; print }' "$archive.all" >"$archive.list" 2>/dev/null
start -Xshare:dump -XX:SharedClassListFile="$archive.list" -XX:SharedArchiveFile="$archive" \
  -cp "$classpath" &&
  start -Xshare:on -XX:SharedArchiveFile="$archive" -cp "$classpath" \
    gripwright.launcher.Launcher gripwright.tools.Main --version
works=$?
rm -f "$archive.one" "$archive.all" "$archive.list"
[ "$works" -eq 0 ]

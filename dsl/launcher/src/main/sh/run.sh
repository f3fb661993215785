# Part of `gripwright`, which reads it with the arguments of the caller, $root and $scripts: starts the
# command line, and has it built, linked and stored before where needed (build.sh).
#
# Every run executes this script. Starting a process costs about as much as a hundred shell tests, so
# it starts as few as possible.
# shellcheck shell=sh disable=SC2154 # set by gripwright

case $root in
  *:*) fail "cannot run from '$root': Java reads ':' as a separator of paths. Rename the folder, or move this one." ;;
esac

app=$root/dsl/tools/target/app # the command line and its libraries, as built
target=$root/dsl/launcher/target
stamp=$target/built
linked=$target/linked
archive=$target/classes.jsa
whole= # the archive, once all of it is known to be there
jars=  # the folder to run from: $app or $linked

if [ -n "${JAVA_HOME:-}" ] && [ -x "$JAVA_HOME/bin/java" ]; then
  java=$JAVA_HOME/bin/java
  javac=$JAVA_HOME/bin/javac
else
  java=
  javac=javac
  set -f
  IFS=:
  for part in $PATH; do
    if [ -z "$java" ] && [ -f "${part:-.}/java" ] && [ -x "${part:-.}/java" ]; then
      java=${part:-.}/java
    fi
  done
  unset IFS
  set +f
  [ -n "$java" ] || fail "no Java found. Install a JDK 17 or newer, or set JAVA_HOME to one."
fi

# True when the last build is missing or older than anything it was made from.
stale() {
  [ -d "$app" ] && [ -d "$target/run" ] && [ -f "$stamp" ] || return 0
  [ -n "$(find "$root/pom.xml" "$root"/core/pom.xml "$root"/dsl/*/pom.xml \
    "$root"/core/src/main "$root"/dsl/*/src/main -newer "$stamp" -print 2>/dev/null)" ]
}

# True when the file on descriptor 3 says that the archive was made here, by this Java (see made_for in
# build.sh). The list of modules, a long line, is left out. A Java that says nothing of itself is known
# by its place alone.
made_here() {
  IFS= read -r bytes <&3 && IFS= read -r made_in <&3 && IFS= read -r made_by <&3 && IFS= read -r jars <&3 || return 1
  [ -n "$whole" ] || whole=$(find "$archive" -size "${bytes}c" 2>/dev/null)
  [ -n "$whole" ] && [ "$made_in" = "$root" ] && [ "$java" -ef "$made_by" ] && [ -d "$jars" ] || return 1
  release=${made_by%/bin/java}/release
  [ -r "$release" ] || return 0
  while IFS= read -r is <&4 && IFS= read -r was <&3; do
    [ "$is" = "$was" ] || return 1
    case $is in MODULES*) return 0 ;; esac
  done 4<"$release"
}

# True when there is no archive of loaded classes, or one of another build or for something else.
unarchived() {
  for jar in "$app"/*.jar "$target/run"/*.jar; do
    [ "$archive" -nt "$jar" ] || return 0
  done
  [ "$archive" -nt "$stamp" ] && [ -r "$archive.for" ] && made_here 3<"$archive.for" && return 1
  return 0
}

# Makes a class path of the jars in the folder chosen, and of the launcher's own. The shell sorts them,
# so the order is the same everywhere.
class_path() {
  locale=${LC_ALL-}
  locale_set=${LC_ALL+yes}
  LC_ALL=C
  IFS=:
  set -- "$jars"/*.jar "$target/run"/*.jar
  classpath="$*"
  unset IFS
  if [ -n "$locale_set" ]; then LC_ALL=$locale; else unset LC_ALL; fi
}

if stale || { [ -w "$target" ] && unarchived; }; then
  . "$scripts/build.sh"
fi

# Short runs: the first compiler tier and the simplest collector start fastest, and nobody watches them
# from outside. Much of their time goes into getting memory page by page: so large pages are taken where
# Linux gives them to those who ask, and new objects get little room, which is used again and again. The
# JVM checks that the archive is as it was written and reports on stderr one that it can't use; Launcher
# deletes that one, so that the next run makes another. Where the caller has options of its own for Java,
# these may be why it is not in use, and it stays; the room for new objects is then the caller's affair.
set -- gripwright.launcher.Launcher gripwright.tools.Main "$@"
if unarchived; then
  jars=$app
  class_path
  set -- -cp "$classpath" "$@"
else
  class_path
  set -- -cp "$classpath" "$@"
  [ ! -s "$archive" ] ||
    set -- -Xlog:disable -Xlog:all=warning:stderr -XX:SharedArchiveFile="$archive" \
      -XX:+VerifySharedSpaces "$@"
  [ ! -s "$archive" ] || [ -n "${JAVA_TOOL_OPTIONS-}${JDK_JAVA_OPTIONS-}${_JAVA_OPTIONS-}" ] ||
    set -- -Dgripwright.archive="$archive" "$@"
fi
# Where the locale has no letters beyond ASCII, Java would find no file with such a name, and no option
# of its own helps. Names of files are UTF-8 then, as nearly everywhere.
case ${LC_ALL:-${LC_CTYPE:-${LANG:-C}}} in
  C | POSIX) LC_ALL=C.UTF-8 && export LC_ALL ;;
esac
[ -n "${JAVA_TOOL_OPTIONS-}${JDK_JAVA_OPTIONS-}${_JAVA_OPTIONS-}" ] || set -- -Xmn32m "$@"
large_pages=/sys/kernel/mm/transparent_hugepage/enabled
if [ -r "$large_pages" ] && read -r pages <"$large_pages"; then
  case $pages in
    *'[never]'*) ;;
    *) set -- -XX:+UseTransparentHugePages "$@" ;;
  esac
fi
exec "$java" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -XX:-UsePerfData "$@"

@echo off
rem Runs the command line of this checkout on Windows. Best effort, untested: it builds when there
rem is no build yet, but does not notice changed sources. Delete dsl\tools\target to build again.
setlocal
set "ROOT=%~dp0"
set "APP=%ROOT%dsl\tools\target\app"
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
if exist "%APP%" goto run
echo gripwright: building once, this takes about a minute 1>&2
pushd "%ROOT%"
call mvnw.cmd -q -B -ntp -Dmaven.test.skip=true -Dspotless.check.skip=true -pl dsl/tools -am package 1>&2
set "STATUS=%ERRORLEVEL%"
popd
if not "%STATUS%"=="0" (
  echo gripwright: the build failed; the lines above say why. 1>&2
  exit /b 2
)
:run
"%JAVA%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -cp "%APP%\*" gripwright.tools.Main %*
exit /b %ERRORLEVEL%

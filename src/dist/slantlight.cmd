@echo off
rem Starts Slantlight with the Java 17 or newer that JAVA_HOME or else the path names.
setlocal DisableDelayedExpansion
set "java=java.exe"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java.exe"
"%java%" -jar "%~dp0..\lib\slantlight.jar" %*
exit /b %ERRORLEVEL%

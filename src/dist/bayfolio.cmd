@echo off
rem Starts Bayfolio with the Java at hand.
setlocal
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
"%java%" -version >nul 2>&1
if errorlevel 1 (
    echo bayfolio needs Java 17 or newer; install it, or set JAVA_HOME to its folder. 1>&2
    exit /b 2
)
"%java%" -jar "%~dp0..\lib\bayfolio.jar" %*
exit /b %errorlevel%

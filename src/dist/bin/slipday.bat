@echo off
rem Starts Slipday with the Java of JAVA_HOME, or else the one on the PATH.
rem SLIPDAY_JAVA_OPTS holds further options for Java.
setlocal
set "lib=%~dp0..\lib"

if defined JAVA_HOME goto home
set "java="
for %%j in (java.exe) do set "java=%%~$PATH:j"
if defined java goto version
echo slipday: Java 17 or newer is needed, and no java was found.>&2
echo Install one and put it on the PATH, or point JAVA_HOME at it.>&2
exit /b 2

:home
set "java=%JAVA_HOME%\bin\java.exe"
if exist "%java%" goto version
echo slipday: JAVA_HOME is "%JAVA_HOME%", but there is no bin\java.exe in it.>&2
echo Point JAVA_HOME at Java 17 or newer, or unset it to use the java on the PATH.>&2
exit /b 2

rem The version is in the file a Java keeps beside its bin folder; where there is none, Java itself is asked.
:version
set "version="
for %%j in ("%java%") do set "release=%%~dpj..\release"
if not exist "%release%" goto ask
for /f "usebackq tokens=1,2 delims==" %%u in ("%release%") do if "%%u"=="JAVA_VERSION" set "version=%%~v"
:ask
if not defined version for /f "tokens=2,3" %%u in ('^""%java%" -version 2^>^&1^"') do if "%%u"=="version" set "version=%%~v"
if not defined version set "version=0"
for /f "tokens=1 delims=.-+" %%m in ("%version%") do set "major=%%m"
if %major% geq 17 goto start
echo slipday: Java 17 or newer is needed, but "%java%" is Java %version%.>&2
echo Install a newer one and put it on the PATH, or point JAVA_HOME at it.>&2
exit /b 2

:start
set "archive="
set "made="
if exist "%lib%\slipday-%version%.for" set /p made=<"%lib%\slipday-%version%.for"
for %%f in ("%lib%\slipday.jar") do if /i "%%~ff"=="%made%" set archive="-XX:SharedArchiveFile=%lib%\slipday-%version%.jsa"
"%java%" -Xshare:auto -XX:TieredStopAtLevel=1 -XX:-UseDynamicNumberOfCompilerThreads -XX:+UseSerialGC -XX:-UsePerfData -Xlog:disable %archive% -XX:+IgnoreUnrecognizedVMOptions -XX:+UnlockDiagnosticVMOptions -XX:ArchiveRelocationMode=0 %SLIPDAY_JAVA_OPTS% -cp "%lib%\slipday.jar" slipday.command.Main %*
exit /b %errorlevel%

@echo off
rem Starts the Truelead workbench. Needs Java 17 or newer. Arguments go to the workbench.
rem TRUELEAD_WORKSPACE names another folder for the projects than truelead-workspace in the home folder.
setlocal
set "here=%~dp0"
set "java=javaw"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\javaw"
if not defined TRUELEAD_WORKSPACE set "TRUELEAD_WORKSPACE=%USERPROFILE%\truelead-workspace"
for %%j in ("%here%plugins\org.eclipse.equinox.launcher_*.jar") do set "launcher=%%j"
start "Truelead" "%java%" -Xmx2g -Dfile.encoding=UTF-8 -jar "%launcher%" -configuration "%here%configuration" -data "%TRUELEAD_WORKSPACE%" -name Truelead %*

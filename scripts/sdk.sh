# Sourced by the other scripts, not run: checks that there is a .NET SDK that can build the
# clone in ROOT.
# Kept to what bash 3.2 knows, which is what macOS ships.

# Stops with a clear word where there is no SDK, or only older ones.
need_sdk() {
    if ! command -v dotnet >/dev/null 2>&1; then
        echo "Dryfit needs the .NET 10 SDK, and there is no 'dotnet' on the PATH." >&2
        echo "Get it from https://dotnet.microsoft.com/download or your system's packages." >&2
        return 1
    fi
    if ! (cd "$ROOT" && dotnet --version >/dev/null 2>&1); then
        echo "Dryfit needs the .NET 10 SDK. Installed here:" >&2
        dotnet --list-sdks 2>/dev/null | sed 's/^/    /' >&2
        echo "Get it from https://dotnet.microsoft.com/download or your system's packages." >&2
        return 1
    fi
}

export DOTNET_NOLOGO=1
export DOTNET_CLI_TELEMETRY_OPTOUT=1
export DOTNET_CLI_UI_LANGUAGE=en
export TESTINGPLATFORM_TELEMETRY_OPTOUT=1
# Where there is no home (a bare container) the SDK and its package folder still need one.
if [ -z "${HOME:-}" ] || [ ! -w "$HOME" ]; then
    export HOME="$ROOT/artifacts/home"
    mkdir -p "$HOME"
fi

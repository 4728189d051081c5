"""The data folder: where this system keeps such things, and whether it can be used."""

import errno
import os
import sys
import tempfile
from collections.abc import Mapping
from pathlib import Path

from witnessmark.cli.errors import CommandError, DiskFull, FileTroubled, FolderNotWritable

FULL = {errno.ENOSPC, errno.EDQUOT} if hasattr(errno, "EDQUOT") else {errno.ENOSPC}
SHUT = {errno.EACCES, errno.EPERM, errno.EROFS, errno.ENOTDIR, errno.EEXIST}


def usual_folder(system: str, home: Path, settings: Mapping[str, str]) -> Path:
    """The folder that this system's programs keep their data in."""
    if system == "win32":
        return Path(settings.get("LOCALAPPDATA") or home / "AppData" / "Local") / "Witnessmark"
    if system == "darwin":
        return home / "Library" / "Application Support" / "Witnessmark"
    return Path(settings.get("XDG_DATA_HOME") or home / ".local" / "share") / "witnessmark"


def data_folder(wished: Path | None) -> Path:
    """The folder to use, made if need be and found writable.

    raises: FolderNotWritable, DiskFull.
    """
    path = wished or usual_folder(sys.platform, Path.home(), os.environ)
    try:
        path.mkdir(mode=0o700, parents=True, exist_ok=True)
        with tempfile.TemporaryFile(dir=path) as probe:
            probe.write(b"\0" * 4096)
            probe.flush()
    except OSError as trouble:
        raise told(trouble, path) from trouble
    return path.resolve()


def told(trouble: OSError, path: Path | None = None) -> CommandError:
    """The system's refusal as one of our sentences."""
    named = str(path or trouble.filename or "the data folder")
    if trouble.errno in FULL:
        return DiskFull(path=named)
    if path is not None and trouble.errno in SHUT:
        return FolderNotWritable(path=named)
    return FileTroubled(path=named, trouble=trouble.strerror or str(trouble))

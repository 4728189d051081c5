"""Where trust keeps its files, and writing them so that a stop in the middle leaves no half."""

import os
from dataclasses import dataclass
from pathlib import Path


@dataclass(frozen=True, slots=True)
class TrustFolder:
    """The files of trust inside one data folder."""

    path: Path

    @property
    def authority(self) -> Path:
        """The authority's key and certificate, together in one file so that they never part."""
        return self.path / "authority.pem"

    @property
    def leaf(self) -> Path:
        """The server's own key and certificate chain, in one file."""
        return self.path / "server.pem"

    @property
    def name(self) -> Path:
        """The name this computer carries on the network, chosen once."""
        return self.path / "name"


def trust_folder(data: Path) -> TrustFolder:
    """The folder of trust in a data folder, made and closed to others if it was not there."""
    path = data / "trust"
    path.mkdir(mode=0o700, parents=True, exist_ok=True)
    return TrustFolder(path)


def write_whole(path: Path, content: bytes) -> None:
    """Put content at path at once, readable by the owner only, on the disk when this returns."""
    aside = path.with_name(path.name + ".new")
    aside.unlink(missing_ok=True)
    handle = os.open(aside, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    with os.fdopen(handle, "wb") as file:
        file.write(content)
        file.flush()
        os.fsync(file.fileno())
    aside.replace(path)

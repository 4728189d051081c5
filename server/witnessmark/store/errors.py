"""What the store alone may refuse, each with a sentence and the next step."""

from witnessmark.errors import RequestProblem, WitnessmarkError


class FolderNotFit(WitnessmarkError):
    """The data folder cannot be used."""

    code = "folder-not-fit"
    says = "The folder {folder} cannot be written."
    next_step = "Choose another folder with --data, or change who may write to this one."


class DatabaseNotFit(WitnessmarkError):
    """The database does not open: not there, not ours, or not ready."""

    code = "database-not-fit"
    says = "The workshop's database does not open: {trouble}."
    next_step = "Look at the address in WITNESSMARK_DATABASE, or bring a backup back."


class FolderNotEmpty(WitnessmarkError):
    """A backup is only brought back into an empty folder."""

    code = "folder-not-empty"
    says = "The folder {folder} already holds something."
    next_step = "Name an empty folder with --data; nothing was changed."


class FileUnreadable(WitnessmarkError):
    """A file that should hold a workshop's copy does not."""

    code = "file-unreadable"
    says = "The file {file} is no copy of a workshop."
    next_step = "Name a file that backup, export or a phone's save to a file has made."


class FileNotWritten(WitnessmarkError):
    """A copy could not be written where it should go."""

    code = "file-not-written"
    says = "The file {file} could not be written."
    next_step = "Name a file in a folder that you may write to and that has room."


class DeviceMissing(RequestProblem):
    """No device of this workshop has this id."""

    code = "device-missing"
    says = "No device of this workshop has the id {device}."
    next_step = "Look at the list of devices for its id."
    status = 404

"""What can be in the way of a command, each with a sentence and the next step."""

from witnessmark.errors import WitnessmarkError


class CommandError(WitnessmarkError):
    """Base of what stops a command before it has begun its work."""

    code = "command"
    says = "The command could not be carried out."
    next_step = "Type python3 server --help to see what there is."


class CommandNotRead(CommandError):
    """Words on the command line that mean nothing here."""

    code = "command-not-read"
    says = "This is not understood: {trouble}."
    next_step = "Type python3 server --help to see what there is."


class PortTaken(CommandError):
    """Another program answers on the port."""

    code = "command-port-taken"
    says = "Port {port} is taken by another program, or by this one started before."
    next_step = "End that one, or choose another with --port."


class PortNotAllowed(CommandError):
    """The system keeps the port for itself."""

    code = "command-port-not-allowed"
    says = "The system does not let this program use port {port}."
    next_step = "Choose one above 1023 with --port."


class FolderNotWritable(CommandError):
    """The data folder cannot be used."""

    code = "command-folder-not-writable"
    says = "The folder {path} may not be written."
    next_step = "Choose a folder of your own with --data."


class DiskFull(CommandError):
    """No room for what must be written."""

    code = "command-disk-full"
    says = "The disk is full; nothing more can be written to {path}."
    next_step = "Make room, then try again."


class FileNotThere(CommandError):
    """A file named on the command line does not exist."""

    code = "command-file-not-there"
    says = "There is no file {path}."
    next_step = "Look at the name again."


class FileTroubled(CommandError):
    """A file or folder that the system will not give."""

    code = "command-file-troubled"
    says = "{path} cannot be used: {trouble}."
    next_step = "Look at its name and who may use it, then try again."


class AddressNotRead(CommandError):
    """The outer address given for a proxy is none."""

    code = "command-address-not-read"
    says = "'{address}' is no address that a phone could open."
    next_step = "Give it whole, like https://bench.example."


class SheetNotSo(CommandError):
    """Labels asked for in a way no sheet has."""

    code = "command-sheet"
    says = "Labels cannot be made so: {trouble}."
    next_step = "Type python3 server labels --help to see what there is."

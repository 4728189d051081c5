"""What the routes alone may refuse."""

from witnessmark.errors import RequestProblem


class HolderUnknown(RequestProblem):
    """No holder of this workshop has this id."""

    code = "holder-unknown"
    says = "No holder here has the id {id}."
    next_step = "Scan the label again, or look it up by name."
    status = 404


class SheetUnknown(RequestProblem):
    """No sheet of this workshop has this id."""

    code = "sheet-unknown"
    says = "No sheet of labels here has the id {id}."
    next_step = "Print a new sheet."
    status = 404

"""What a working can refuse before any rule is asked."""

from __future__ import annotations

from witnessmark.errors import RequestProblem, TradeError


class WorkingUnknown(RequestProblem):
    """No working has this name."""

    code = "working-unknown"
    says = "No working is called {working}."
    next_step = "Choose one of these: {known}."
    status = 404


class AskUnknown(TradeError):
    """A value that the working does not ask for."""

    code = "working-ask-unknown"
    says = "This working does not ask for {ask}."
    next_step = "It asks for these: {known}."


class AskMissing(TradeError):
    """A value the working cannot do without."""

    code = "working-missing"
    says = "The {ask} is missing."
    next_step = "Type it, then look again."


class AskShape(TradeError):
    """A value in a shape that cannot be read."""

    code = "working-shape"
    says = "The {ask} {trouble}."
    next_step = "Give a number with its unit, like 60 N·m."


class NotAChoice(TradeError):
    """A word that is none of the choices."""

    code = "working-choice"
    says = "{typed} is none of the choices."
    next_step = "Choose one of these: {known}."


class RowsUneven(TradeError):
    """Rows of which some numbers are missing."""

    code = "working-rows"
    says = "Every {row} needs all of its numbers."
    next_step = "Fill in what is missing, or leave the whole {row} out."


class WorkingDoubled(TradeError):
    """Two workings, or two values of one working, have the same name."""

    code = "working-doubled"
    says = "The name {name} is taken or cannot be used."
    next_step = "Choose another name."

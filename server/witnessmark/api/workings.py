"""Workings: computations without any record, the same as on the phone and the command line."""

from typing import Any

from flask import Response

from witnessmark.api.body import json_object
from witnessmark.api.keys import bearer
from witnessmark.api.routing import Routes, tell
from witnessmark.api.shapes import WorkingAnswer, WorkingList, WorkingRequest
from witnessmark.errors import RequestMissing, RequestShape
from witnessmark.log.clean import Flaw
from witnessmark.trade.workings.registry import WORKINGS, work_out, working

routes = Routes("workings", "Computations without any record.")


@routes.get("/workings", told=WorkingList)
def workings() -> Response:
    """List the workings with what each asks, its formula and its source."""
    bearer()
    return tell({"workings": [each.told() for each in WORKINGS.values()]})


@routes.post("/workings/<name>", wanted=WorkingRequest, told=WorkingAnswer)
def worked(name: str) -> Response:
    """Work out one of them from what is given: texts, numbers with units, or lists of them."""
    bearer()
    working(name)
    wanted = json_object()
    if "given" not in wanted:
        raise RequestMissing(what="given")
    given = wanted["given"]
    if type(given) is not dict:
        raise RequestShape(what="given", trouble="is no object")
    return tell(work_out(name, {ask: _plain(value) for ask, value in given.items()}))


def _plain(value: Any) -> Any:
    """A value without flaws: a fraction as a number is no text that was typed."""
    if isinstance(value, Flaw):
        raise value.refusal
    if isinstance(value, list):
        return [_plain(each) for each in value]
    if isinstance(value, dict):
        return {key: _plain(each) for key, each in value.items()}
    return value

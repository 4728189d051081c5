"""The one handler: every error leaves as a problem document (RFC 9457) with code and next step."""

import logging

from flask import Flask, Response, json, request
from werkzeug.exceptions import HTTPException, MethodNotAllowed, NotFound, RequestEntityTooLarge

from witnessmark.api.body import drain
from witnessmark.errors import (
    AddressUnknown,
    MethodUnknown,
    Refusal,
    RequestProblem,
    SomethingBroke,
    StoreBusy,
    TooMuch,
    WitnessmarkError,
)
from witnessmark.labels.layout import GridImpossible

PROBLEM = "application/problem+json"
_OURS = 500
_RETRY_SECONDS = 2
_UNAUTHORIZED = 401
_UNPROCESSABLE = 422
_trace = logging.getLogger("witnessmark.api")


def install(app: Flask) -> None:
    """Let this handler answer for every error of the app."""
    app.register_error_handler(Exception, _answer)
    # flask-smorest has put its own handler there, whose "code" is the number of HTTP.
    app.register_error_handler(HTTPException, _answer)


def _answer(fault: Exception) -> Response:
    drain()
    if isinstance(fault, RequestProblem):
        return problem(fault)
    if isinstance(fault, Refusal | GridImpossible):
        return problem(fault, status=_UNPROCESSABLE)
    if isinstance(fault, WitnessmarkError):
        _trace.warning("%s: %s", fault.code, fault)
        return problem(fault)
    if isinstance(fault, HTTPException):
        return _http(fault)
    _trace.error("no error names this", exc_info=fault)
    return problem(SomethingBroke())


def _http(fault: HTTPException) -> Response:
    if isinstance(fault, NotFound):
        return problem(AddressUnknown())
    if isinstance(fault, MethodNotAllowed):
        answer = problem(MethodUnknown(method=request.method))
        answer.headers["Allow"] = ", ".join(sorted(fault.valid_methods or ()))
        return answer
    if isinstance(fault, RequestEntityTooLarge):
        return problem(TooMuch(trouble="its body is too long"))
    return problem(RequestProblem(), status=fault.code)


def document(fault: WitnessmarkError, number: int) -> dict[str, object]:
    """What a problem document says."""
    told = {
        "type": f"/api/v1/docs#{fault.code}",
        "title": fault.sentence,
        "status": number,
        "code": fault.code,
        "next": fault.next,
    }
    return told | ({"about": fault.facts["about"]} if "about" in fault.facts else {})


def problem(fault: WitnessmarkError, status: int | None = None) -> Response:
    """The problem document of an error."""
    number: int = status or (fault.status if isinstance(fault, RequestProblem) else _OURS)
    answer = Response(json.dumps(document(fault, number)), number, mimetype=PROBLEM)
    if number == _UNAUTHORIZED:
        answer.headers["WWW-Authenticate"] = 'Bearer realm="witnessmark"'
    if isinstance(fault, StoreBusy):
        answer.headers["Retry-After"] = str(_RETRY_SECONDS)
    if "seconds" in fault.facts:
        answer.headers["Retry-After"] = str(fault.facts["seconds"])
    return answer

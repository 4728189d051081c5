"""The floor: every error of the house has a code, a sentence for a person, and a next step.

    WitnessmarkError
    ├── Refusal            one entry the log will not take
    │   └── TradeError     what cannot be true on an engine; its subclasses stand in trade
    └── RequestProblem     a whole request is turned away, with the number HTTP has for it

A code never changes once it is out: other programs and the phone's texts hang on it.
"""

from __future__ import annotations

from typing import ClassVar


def _filled(template: str, facts: dict[str, object]) -> str:
    """The template with its facts, each as much of it as a person reads, without half signs."""
    plain = {name: f"{fact!s:.300}" for name, fact in facts.items()}
    return template.format(**plain).encode("utf-8", "replace").decode()


class WitnessmarkError(Exception):
    """Something a person can do something about."""

    code: ClassVar[str] = "witnessmark"
    says: ClassVar[str] = "Something is not as it should be."
    next_step: ClassVar[str] = "Look at the trace on the computer, then try again."

    def __init__(self, **facts: object) -> None:
        self.facts = facts
        super().__init__(self.sentence)

    @property
    def sentence(self) -> str:
        """The sentence with its facts filled in."""
        return _filled(self.says, self.facts)

    @property
    def next(self) -> str:
        """What to do now, with the facts filled in."""
        return _filled(self.next_step, self.facts)

    def answer(self) -> dict[str, str]:
        """The shape an answer has on the wire."""
        return {"code": self.code, "says": self.sentence, "next": self.next}


class Refusal(WitnessmarkError):
    """The log will not take this one entry; the phone keeps it until it is repaired."""

    code = "refused"
    says = "The computer would not take this entry."
    next_step = "Enter it again, or strike it out."


class TradeError(Refusal):
    """What cannot be true on an engine."""

    code = "cannot-be"
    says = "This cannot be so on an engine."
    next_step = "Look again and enter it anew."


class NotAnObject(Refusal):
    """An entry that is no JSON object."""

    code = "not-an-object"
    says = "This entry is no object with fields."


class FieldMissing(Refusal):
    """A field that every entry, or every entry of its heading, must have."""

    code = "field-missing"
    says = "{what} is missing."


class FieldShape(Refusal):
    """A field is there but cannot be read."""

    code = "field-shape"
    says = "{what} {trouble}."


class NumberNotWhole(Refusal):
    """A JSON number that the two languages would not write alike."""

    code = "number-not-whole"
    says = "The number {number} is not a whole one that every device writes alike."
    next_step = "Write a measured value as text with its unit, and enter it again."


class TextNotClean(Refusal):
    """Keys, signs or nesting that have no single canonical text."""

    code = "text-not-clean"
    says = "The text of this entry cannot be kept: {trouble}."


class EntryTooLarge(Refusal):
    """More than 64 KiB in one entry."""

    code = "entry-too-large"
    says = "This entry has {size} bytes; 65536 is the most one may have."
    next_step = "Split it into several, or shorten its text."


class IdTaken(Refusal):
    """Another entry has this id already."""

    code = "id-taken"
    says = "Another entry already has the id {id}."
    next_step = "Enter it again, so that it gets an id of its own."


class RequestProblem(WitnessmarkError):
    """A whole request is turned away."""

    code = "request"
    says = "This request cannot be answered."
    next_step = "Load the page anew, then try again."
    status: ClassVar[int] = 400


class NotJson(RequestProblem):
    """A body that no JSON parser reads."""

    code = "not-json"
    says = "What was sent is no JSON text: {trouble}."
    next_step = "Send one JSON object in UTF-8."


class RequestShape(RequestProblem):
    """A readable body whose fields are not what the route wants."""

    code = "field-shape"
    says = "{what} {trouble}."
    next_step = "Look at the description of this route, and send it again."
    status = 422


class RequestMissing(RequestShape):
    """A field the route wants is not there."""

    code = "field-missing"
    says = "{what} is missing."


class WrongType(RequestProblem):
    """A content type or encoding the route does not read."""

    code = "type-unknown"
    says = "{type} is not read here."
    next_step = "Send {wanted}."
    status = 415


class TooMuch(RequestProblem):
    """More entries, bytes or nesting than one request may carry."""

    code = "too-much"
    says = "This is more than one request may carry: {trouble}."
    next_step = "Send it in smaller portions."
    status = 413


class LogForked(RequestProblem):
    """The cursor names an entry that this log does not have at that number."""

    code = "log-forked"
    says = "The computer's log is not the one this device knew."
    next_step = "The device fetches everything again by itself, then sends what is missing here."
    status = 409


class DeviceUnknown(RequestProblem):
    """No key, a broken one, or one this workshop never gave."""

    code = "device-unknown"
    says = "The computer does not know this device."
    next_step = "Pair it: on the computer choose Devices, then scan the code it shows."
    status = 401


class DeviceRevoked(RequestProblem):
    """The key was taken back."""

    code = "device-revoked"
    says = "This device was shut out at the computer."
    next_step = "What it holds stays kept. Pair it again, or save it to a file and import that."
    status = 401


class PairingCodeUnknown(RequestProblem):
    """A pairing code that was never given, is used, or has run out."""

    code = "pairing-code-unknown"
    says = "This pairing code is not known, or its ten minutes are over."
    next_step = "Ask the computer for a new code."
    status = 403


class PairingPaused(RequestProblem):
    """Too many wrong pairing codes."""

    code = "pairing-paused"
    says = "Five wrong codes were tried. Pairing rests for {seconds} seconds."
    next_step = "Wait, then type the code the computer shows."
    status = 429


class PartUnknown(RequestProblem):
    """No part of this workshop has this id or label."""

    code = "part-unknown"
    says = "No part here has the id or label {id}."
    next_step = "Scan the label again, or look it up by name."
    status = 404


class JointUnknown(RequestProblem):
    """No joint of this workshop has this id."""

    code = "joint-unknown"
    says = "No joint here has the id {id}."
    next_step = "Open the joint from one of its parts."
    status = 404


class AddressUnknown(RequestProblem):
    """No route has this address."""

    code = "address-unknown"
    says = "Nothing is at this address."
    next_step = "The routes are described under /api/v1/docs."
    status = 404


class MethodUnknown(RequestProblem):
    """The address is known, the verb is not used there."""

    code = "method-unknown"
    says = "This address does not answer to {method}."
    next_step = "The routes are described under /api/v1/docs."
    status = 405


class PhotoDiffers(RequestProblem):
    """The bytes that came are not those the name promises."""

    code = "photo-differs"
    says = "The picture that came is not the one its name stands for."
    next_step = "Send it again."
    status = 422


class PhotoUnknown(RequestProblem):
    """No photo by this name has arrived yet."""

    code = "photo-unknown"
    says = "This picture has not arrived here yet."
    next_step = "Sync the device that took it."
    status = 404


class NoRoom(RequestProblem):
    """The computer's disk is full."""

    code = "no-room"
    says = "The computer's disk is full. Nothing of this was kept there."
    next_step = "Free some room on the computer; the phone tries again by itself."
    status = 507


class StoreBusy(RequestProblem):
    """The database is held by something else for too long."""

    code = "store-busy"
    says = "The computer is busy with its own records."
    next_step = "The phone tries again by itself."
    status = 503


class SomethingBroke(RequestProblem):
    """A fault of ours that no other error names."""

    code = "something-broke"
    says = "The computer could not finish this. Nothing was lost."
    next_step = "Try again; the trace on the computer says more."
    status = 500


class TimeBeyond(WitnessmarkError):
    """A moment that does not fit the 48 bits of an id or a stamp."""

    code = "time-beyond"
    says = "The clock shows {ms} ms, which no id can hold."
    next_step = "Set the clock of this device."

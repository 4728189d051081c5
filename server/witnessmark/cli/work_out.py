"""Workings from the terminal: a computation without any record."""

from argparse import Namespace
from collections.abc import Mapping
from typing import Any

from witnessmark.cli.arguments import Reader
from witnessmark.cli.errors import CommandNotRead
from witnessmark.cli.say import say, say_json
from witnessmark.errors import TradeError
from witnessmark.trade.workings.registry import WORKINGS, work_out, working
from witnessmark.trade.workings.working import Ask, Working

_WIDTH = 22


def work(wished: Namespace) -> None:
    """List the workings, or work one out from what is typed."""
    words = list(wished.words)
    if not words or words[0] in {"--json", "--help", "-h"}:
        _list(as_json=words[:1] == ["--json"])
        return
    asked = working(words[0])
    typed = vars(_reader(asked).parse_args(words[1:]))
    as_json = typed.pop("as_json")
    given = {name: value for name, value in typed.items() if value is not None}
    try:
        told = work_out(asked.name, given)
    except TradeError as refused:
        about = refused.facts.get("about")
        raise WorkingRefused(
            about=f"--{about}: " if about else "", says=refused.sentence, next=refused.next
        ) from refused
    if as_json:
        say_json(told)
        return
    _tell(told)


class WorkingRefused(CommandNotRead):
    """What a working cannot read or cannot do, with the option it is about."""

    code = "command-working"
    says = "{about}{says}"
    next_step = "{next}"


def _list(*, as_json: bool) -> None:
    if as_json:
        say_json({"workings": [each.told() for each in WORKINGS.values()]})
        return
    for each in WORKINGS.values():
        say(f"{each.name:<{_WIDTH}}{each.says}")
    say("What one of them asks: python3 server work-out NAME --help")


def _reader(asked: Working) -> Reader:
    parser = Reader(
        prog=f"python3 server work-out {asked.name}",
        description=f"{asked.says} {_plain(asked.formula)}",
        epilog=f"Source: {_plain(asked.source)}",
        allow_abbrev=False,
    )
    for ask in asked.asks:
        parser.add_argument(f"--{ask.name}", dest=ask.name, metavar="TEXT", help=_help(ask))
    parser.add_argument("--json", dest="as_json", action="store_true", help="one line")
    return parser


def _help(ask: Ask) -> str:
    """What may be typed for an ask."""
    kinds = {"share": "per cent", "count": "a whole number", "any": "a number with its unit"}
    what = ", ".join(ask.choices) or kinds.get(ask.quantity, ask.quantity.replace("-", " "))
    if ask.units:
        what += f" in {', '.join(ask.units)}"
    several = "; several, with spaces between" if ask.many else ""
    left_out = f" ({ask.default} {ask.unit or ''}".rstrip() + ")" if ask.default else ""
    return _plain(what + several + left_out + ("; may be left out" if ask.optional else ""))


def _plain(text: str) -> str:
    """Text as argparse takes it, to whom a per cent sign is a place to fill."""
    return text.replace("%", "%%")


def _tell(told: Mapping[str, Any]) -> None:
    for caution in told["cautions"]:
        say(f"{caution['word'].capitalize()}. {caution['says']}")
    for line in told["lines"]:
        say(f"{_said(line['name']):<{_WIDTH}} {_figure(line)}")
    say(f"{'formula':<{_WIDTH}} {told['formula']}")
    say(f"{'source':<{_WIDTH}} {told['source']}")


def _figure(line: Mapping[str, Any]) -> str:
    unit = line["unit"] or ""
    told = f"{line['shown']} {unit}".rstrip()
    if line["between"]:
        told += f" ({line['between'][0]} to {line['between'][1]} {unit}".rstrip() + ")"
    if line["other"]:
        told += f" = {line['other']}"
    return told + (f" [{_said(line['mark'])}]" if line["mark"] else "")


def _said(name: str) -> str:
    return name.replace("-", " ")

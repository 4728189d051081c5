"""Bring: how many used ones to bring home so that enough turn out good, and what it costs."""

from __future__ import annotations

from witnessmark.trade import money
from witnessmark.trade.money import Money
from witnessmark.trade.workings import lines
from witnessmark.trade.workings.cautions import Caution, caution
from witnessmark.trade.workings.errors import AskMissing
from witnessmark.trade.workings.given import Given
from witnessmark.trade.workings.working import Ask, Line, Result, Working

FEW = 10
"""Fewer inspected ones than this leave a band that says little (ours)."""


def work(given: Given) -> Result:
    """The number, the chance it gives, the share rejected with its band, and the cost."""
    from witnessmark.trade import yields  # noqa: PLC0415 - its distributions are slow to load

    needed, wanted = given.count("needed"), given.share("chance")
    share: tuple[Line, ...] = ()
    cautions: tuple[Caution, ...] = ()
    if given.has("share-good"):
        found = yields.bring(needed, given.share("share-good"), wanted)
    else:
        inspected, rejected = given.count("inspected"), given.count("rejected")
        found = yields.bring_learned(needed, inspected, rejected, wanted)
        known = yields.share_rejected(inspected, rejected)
        share = (lines.share("share-rejected", known.mean, band=(known.low, known.high)),)
        if inspected < FEW:
            cautions = (caution("bring-few", inspected=str(inspected)),)
    cost, dear = _cost(given, found.bring, needed)
    return Result(
        (
            lines.count("bring", found.bring),
            lines.share("chance-reached", found.chance_reached, decimals=1),
            *share,
            *cost,
        ),
        (*dear, *cautions),
    )


def _cost(given: Given, brought: int, needed: int) -> tuple[tuple[Line, ...], tuple[Caution, ...]]:
    """What they cost used, and the needed ones new, where the prices are known."""
    if not given.has("price-used") and not given.has("price-new"):
        return (), ()
    from witnessmark.trade import yields  # noqa: PLC0415 - as above

    used, new = (_price(given, name) for name in ("price-used", "price-new"))
    found = yields.used_against_new(brought, used, needed, new)
    told = (_sum("used-total", found.used_total), _sum("new-total", found.new_total))
    return told, () if found.used_is_cheaper else (caution("bring-new-cheaper"),)


def _price(given: Given, name: str) -> Money:
    if not given.has(name):
        raise AskMissing(ask=name.replace("-", " "), about=name)
    return money.parse(given.word(name), given.word("currency"))


def _sum(name: str, amount: Money) -> Line:
    digits = money.minor_digits(amount.currency)
    value = amount.minor / 10**digits
    return Line(name, value, amount.currency, shown=money.text(amount))


BRING = Working(
    name="bring",
    says="So that enough used ones turn out good, and what they cost.",
    formula="least N with a chance of at least so many good ones; "
    "share rejected ~ Beta(1 + rejected, 1 + inspected − rejected)",
    source="Beta-binomial distribution; before the first inspection every share counts as "
    "equally likely.",
    asks=(
        Ask("needed", "count"),
        Ask("inspected", "count", default="0"),
        Ask("rejected", "count", default="0"),
        Ask("chance", "share", default="95"),
        Ask("share-good", "share", optional=True),
        Ask("price-used", "number", optional=True),
        Ask("price-new", "number", optional=True),
        Ask("currency", "currency", default="EUR"),
    ),
    work=work,
    blames={
        "yields-rejected-above-inspected": "rejected",
        "yields-none-good": "share-good",
        "money-currency": "currency",
        "money-decimals": "price-used",
    },
)

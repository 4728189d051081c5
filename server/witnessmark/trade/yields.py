"""How many used parts turn out good: the share so far, how many to bring home, what it costs.

The share of rejected ones has a beta distribution: the prior plus what was inspected. The prior is
the caller's and is told; 1 and 1 says that every share was as likely before.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from scipy.stats import beta

from witnessmark.errors import TradeError
from witnessmark.trade import amounts, money, yield_series
from witnessmark.trade.money import Money
from witnessmark.trade.yield_series import Bring, TooManyToBring, open_chance

MOST = yield_series.MOST
MOST_NEEDED = 10_000


class RejectedAboveInspected(TradeError):
    """More thrown out than looked at."""

    code = "yields-rejected-above-inspected"
    says = "{rejected} rejected of {inspected} inspected cannot be."
    next_step = "Count both again."


class NoneGood(TradeError):
    """Where none is good no number is enough."""

    code = "yields-none-good"
    says = "No number is enough when none is good."
    next_step = "Buy new, or look at another donor."


@dataclass(frozen=True, slots=True)
class Share:
    """The share rejected, and the band it lies in with the credibility asked for."""

    mean: float
    low: float
    high: float


@dataclass(frozen=True, slots=True)
class Against:
    """What so many used ones cost against the new ones needed."""

    used_total: Money
    new_total: Money
    difference: Money
    """New less used: above zero is saved."""
    used_is_cheaper: bool
    price_even: Money
    """Up to this price each the used ones are not dearer."""


def share_rejected(
    inspected: int,
    rejected: int,
    prior_a: float = 1.0,
    prior_b: float = 1.0,
    credible: float = 0.95,
) -> Share:
    """Share rejected among all of the kind, from those inspected; prior_a belongs to rejected.

    The band has equal tails. With nothing inspected it is that of the prior.
    raises: RejectedAboveInspected, NoCertainty; NotACount, NotAboveZero; NotANumber.
    source: beta posterior of a binomial share, scipy.stats.beta
    >>> found = share_rejected(32, 8)
    >>> round(found.mean, 6), round(found.low, 6), round(found.high, 6)
    (0.264706, 0.132996, 0.422589)
    """
    a, b = _posterior(inspected, rejected, prior_a, prior_b)
    tail = (1 - open_chance(credible, "credibility")) / 2
    low, high = (_quantile(each, a, b) for each in (tail, 1 - tail))
    return Share(a / (a + b), low, high)


def bring(needed: int, share_good: float, chance: float) -> Bring:
    """How many to bring so that with that chance enough are good; share known.

    raises: NoneGood, NoCertainty, TooManyToBring; NotACount, NotAShare; NotANumber.
    source: binomial distribution (definition)
    >>> bring(8, 0.75, 0.95).bring
    14
    """
    least = _needed(needed)
    return yield_series.least(yield_series.known(least, _good(share_good)), least, chance)


def bring_learned(
    needed: int,
    inspected: int,
    rejected: int,
    chance: float,
    *,
    prior_a: float = 1.0,
    prior_b: float = 1.0,
) -> Bring:
    """How many to bring where the share is only known from inspections: more than bring says.

    raises: as share_rejected and bring.
    source: beta-binomial distribution (definition)
    >>> bring_learned(8, 32, 8, 0.95).bring
    16
    """
    a, b = _posterior(inspected, rejected, prior_a, prior_b)
    least = _needed(needed)
    return yield_series.least(yield_series.learned(least, b, a), least, chance)


def chance(brought: int, needed: int, share_good: float) -> float:
    """The chance that so many brought hold enough good ones; share known.

    raises: NotACount, NotAShare; NotANumber.
    source: binomial distribution (definition)
    >>> round(chance(12, 8, 0.75), 6)
    0.842356
    """
    good = amounts.share(share_good, "share good")
    many = _brought(brought)
    least = _needed(needed)
    return 0.0 if good == 0 else yield_series.at(yield_series.known(least, good), least, many)


def chance_learned(
    brought: int,
    needed: int,
    inspected: int,
    rejected: int,
    *,
    prior_a: float = 1.0,
    prior_b: float = 1.0,
) -> float:
    """The same where the share is only known from inspections.

    raises: as share_rejected.
    source: beta-binomial distribution (definition)
    >>> round(chance_learned(12, 8, 32, 8), 6)
    0.781557
    """
    a, b = _posterior(inspected, rejected, prior_a, prior_b)
    many, least = _brought(brought), _needed(needed)
    return yield_series.at(yield_series.learned(least, b, a), least, many)


def used_against_new(brought: int, price_used: Money, needed: int, price_new: Money) -> Against:
    """What bringing so many used ones costs against buying the needed ones new.

    raises: money.CurrenciesMixed, NoMoney; BelowZero; NotACount.
    source: arithmetic
    >>> prices = money.parse("4.00", "EUR"), money.parse("9.50", "EUR")
    >>> found = used_against_new(14, prices[0], 8, prices[1])
    >>> str(found.used_total), str(found.new_total), found.used_is_cheaper
    ('56.00 EUR', '76.00 EUR', True)
    """
    many = amounts.count(brought, "brought", 1)
    for price in (price_used, price_new):
        amounts.not_below_zero(money.checked(price, "price").minor, "price")
    used = money.times(price_used, many)
    new = money.times(price_new, amounts.count(needed, "needed", 1))
    saved = money.total([new, Money(used.currency, -used.minor)])
    even = Money(new.currency, new.minor // many)
    return Against(used, new, saved, saved.minor > 0, even)


def _posterior(
    inspected: int, rejected: int, prior_a: float, prior_b: float
) -> tuple[float, float]:
    seen = amounts.count(inspected, "inspected")
    bad = amounts.count(rejected, "rejected")
    if bad > seen:
        raise RejectedAboveInspected(rejected=bad, inspected=seen)
    a, b = (amounts.above_zero(each, "prior") for each in (prior_a, prior_b))
    return a + bad, b + seen - bad


def _quantile(part: float, a: float, b: float) -> float:
    """scipy's root is good to 1e-8 only where a and b are large; one step of Newton mends it."""
    found = float(beta.ppf(part, a, b))
    slope = float(beta.pdf(found, a, b))
    if not 0 < slope < math.inf:
        return found
    better = found - (float(beta.cdf(found, a, b)) - part) / slope
    return better if 0 < better < 1 else found


def _good(share: float) -> float:
    if amounts.share(share, "share good") == 0:
        raise NoneGood()
    return share


def _needed(needed: int) -> int:
    least = amounts.count(needed, "needed", 1)
    if least > MOST_NEEDED:
        raise TooManyToBring(most=MOST_NEEDED)
    return least


def _brought(brought: int) -> int:
    many = amounts.count(brought, "brought")
    if many > MOST:
        raise TooManyToBring(most=MOST)
    return many

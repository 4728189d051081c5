"""Published values of money: minor units, sums, sharing, tax."""

from typing import Any

from witnessmark.trade import money, tax

Given = dict[str, Any]


def taxed(given: Given) -> Given:
    how = str(given["tax_percent"]), given.get("rounding", "half up")
    if "gross" in given:
        found = tax.tax_within(money.parse(given["gross"], given["currency"]), *how)
    else:
        found = tax.tax_on(money.parse(given["net"], given["currency"]), *how)
    return {name: getattr(found, name).text for name in ("net", "tax", "gross")}


def shared(given: Given) -> Given:
    currency = given["currency"]
    whole = given.get("shipping", given.get("tax", given.get("whole")))
    lines = [money.parse(each, currency) for each in given["lines"]]
    return {"shares": [each.text for each in money.shared(money.parse(whole, currency), lines)]}


def summed(given: Given) -> Given:
    listed = [
        money.parse(each["value"], each["currency"])
        if isinstance(each, dict)
        else money.parse(each, given["currency"])
        for each in given["amounts"]
    ]
    if not listed:
        money.total(listed)
    gives: Given = {"sums": {code: each.text for code, each in money.sums(listed).items()}}
    if len(gives["sums"]) == 1:
        gives["sum"] = money.total(listed).text
    return gives


def BY_SHAPE(given: Given) -> Given:  # noqa: N802 - the frame's name for it
    if "tax_percent" in given:
        return taxed(given)
    if "lines" in given:
        return shared(given)
    if "amounts" in given:
        return summed(given)
    return {"minor_digits": money.minor_digits(given["currency"])}


TOPICS: dict[str, Any] = {}

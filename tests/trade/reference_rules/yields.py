"""Published values of yields: share with band, how many to bring, chance from a lot, prices."""

from typing import Any

from witnessmark.trade import money, yields

Given = dict[str, Any]


def band(given: Given) -> Given:
    found = yields.share_rejected(
        given["inspected"],
        given["rejected"],
        given.get("prior_a", 1),
        given.get("prior_b", 1),
        given.get("credible", 0.95),
    )
    return {"mean": found.mean, "low": found.low, "high": found.high}


def prior(given: Given) -> dict[str, float]:
    return {key: given.get(key, 1) for key in ("prior_a", "prior_b")}


def to_bring(given: Given) -> Given:
    needed, chance = given["needed"], given["chance"]
    if "share_good" in given:
        found = yields.bring(needed, given["share_good"], chance)
    else:
        seen = given["inspected"], given["rejected"]
        found = yields.bring_learned(needed, *seen, chance, **prior(given))
    return {"bring": found.bring, "chance_reached": found.chance_reached}


def from_lot(given: Given) -> Given:
    lot = given["bring"], given["needed"]
    if "share_good" in given:
        return {"chance": yields.chance(*lot, given["share_good"])}
    seen = given["inspected"], given["rejected"]
    return {"chance": yields.chance_learned(*lot, *seen, **prior(given))}


def against(given: Given) -> Given:
    used, new = (money.parse(given[key], given["currency"]) for key in ("price_used", "price_new"))
    found = yields.used_against_new(given["bring"], used, given["needed"], new)
    return {
        "used_total": found.used_total.text,
        "new_total": found.new_total.text,
        "difference": found.difference.text,
        "used_is_cheaper": found.used_is_cheaper,
    }


def BY_SHAPE(given: Given) -> Given:  # noqa: N802 - the frame's name for it
    if "price_used" in given:
        return against(given)
    if "bring" in given:
        return from_lot(given)
    return to_bring(given) if "needed" in given else band(given)


TOPICS: dict[str, Any] = {}

"""Published values of proof: differential compression, evenness, pressure trace, prime."""

from typing import Any

from trade.reference_amounts import named, told
from witnessmark.trade import pressure_trace, proof, units

Given = dict[str, Any]
SHARES = range(50, 100, 5)


def leak(made: Given) -> Given:
    share = proof.leakage(made["supply"], made["cylinder"])
    within = {f"within_{each}_percent": proof.within(share, each / 100) for each in range(5, 55, 5)}
    return {"leak_share": share, "within_25_percent": proof.within(share, proof.AVIATION_SHARE)} | (
        within
    )


def even(made: Given) -> Given:
    found = proof.evenness(made["readings"])
    share = found.lowest_over_highest
    return {
        "lowest_over_highest": share,
        "lowest_cylinder": found.lowest,
        "highest_cylinder": found.highest,
        **told("mean", found.mean),
        **{f"even_at_0_{each}": proof.even(share, each / 100) for each in SHARES},
    }


def traced(given: Given) -> Given:
    key = next(each for each in given if each.startswith("trace_s_"))
    word = {"psi": "psi", "kPa": "kPa", "bar": "bar"}[key.removeprefix("trace_s_")]
    trace = [
        pressure_trace.Point(units.quantity(time, "s"), units.quantity(size, word))
        for time, size in given[key]
    ]
    made, gives = named({**given, key: None}), Given()
    if "threshold" in made:
        time = pressure_trace.time_to(trace, made["threshold"])
        gives |= {"reached": time is not None, "time_to_threshold_s": None}
        gives |= told("time_to_threshold", time)
    if "plateau_last" in made:
        gives |= told("plateau_mean", pressure_trace.plateau(trace, made["plateau_last"]))
    return gives


def primed(given: Given) -> Given:
    found = proof.prime(given["places"], given["seen"])
    return {"complete": found.complete, "missing": list(found.missing)}


def BY_SHAPE(given: Given) -> Given:  # noqa: N802 - the frame's name for it
    if any(key.startswith("trace") for key in given):
        return traced(given)
    if "places" in given:
        return primed(given)
    made = named(given)
    if "bore" in made:
        return told("orifice", proof.orifice(made["bore"]))
    return even(made) if "readings" in made else leak(made)


TOPICS: dict[str, Any] = {}

"""Published and computed check values, each made into calls of the rules it concerns.

A case becomes calls ("rule", given) and a check of their results; both languages run the calls.
"""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from witnessmark.trade import label

Call = tuple[str, dict[str, Any]]
CHECK_SYMBOLS = label.ALPHABET + "*~$=U"


@dataclass(frozen=True)
class Case:
    calls: list[Call]
    check: Callable[[list[Any]], list[tuple[Any, Any]]]
    """From the results of the calls: pairs of what is expected and what came."""


def newton_metres(number: float | None) -> dict[str, str] | None:
    return None if number is None else {"value": str(number), "unit": "N·m"}


def sequence(given: dict[str, Any], gives: dict[str, Any]) -> Case:
    count = given.get("fasteners", given.get("rows", 1) * given.get("columns", 1))
    calls: list[Call] = [("sequence.order", {"pattern": given["pattern"], "count": count})]
    return Case(calls, lambda out: sequence_checks(given, gives, out[0], count))


def sequence_checks(
    given: dict[str, Any], gives: dict[str, Any], out: Any, count: int
) -> list[tuple[Any, Any]]:
    if "refused" in gives:
        return [({"refused": "sequence-no-fasteners"}, out)]
    if given.get("loosen"):
        return [(gives["order"], out[::-1])]
    if "order" in gives:
        allowed = [gives["order"], gives.get("or", gives["order"])]
        return [(True, out in allowed)]
    pairs: list[tuple[Any, Any]] = [(list(range(1, count + 1)), sorted(out))]
    if "second_steps_away_at_least" in gives:
        apart = abs(out[1] - out[0])
        pairs.append((True, min(apart, count - apart) >= gives["second_steps_away_at_least"]))
    if "first_two_columns_are" in gives:
        columns = [(number - 1) % given["columns"] + 1 for number in out]
        pairs.append((gives["first_two_columns_are"], sorted(set(columns[:2]))))
        pairs.append((gives["last_two_columns_are"], sorted(set(columns[-2:]))))
    return pairs


def code(given: dict[str, Any], gives: dict[str, Any]) -> Case:
    if "length" in given:
        changes = given["length"] * (given["alphabet"] - 1)
        expected = (gives["single_changes"], gives["neighbour_swaps_at_most"])
        return Case([], lambda _: [(expected, (changes, given["length"] - 1))])
    if "alphabet" in given:
        values = [value_of(sign) for sign in gives["symbols"]]
        return Case(values, lambda out: [(list(range(32)), out)])
    if "number" in given:
        return number_case(given["number"], gives)
    signs = [value_of(sign) for sign in given["typed"].replace("-", "")]
    if "refused" in gives:
        return Case(signs, lambda out: [(True, {"refused": "label-sign"} in out)])
    return Case(signs, lambda out: [(gives["read"], "".join(label.ALPHABET[n] for n in out))])


def value_of(sign: str) -> Call:
    return "label.value", {"sign": sign}


def number_case(number: int, gives: dict[str, Any]) -> Case:
    symbol = CHECK_SYMBOLS[number % 37]
    if "check_symbol" in gives:
        return Case([], lambda _: [(gives["check_symbol"], symbol)])

    def read(out: list[Any]) -> list[tuple[Any, Any]]:
        folded = sum(value * 32**place for place, value in enumerate(reversed(out)))
        return [(number, folded), (gives["with_check"], gives["code"] + symbol)]

    return Case([value_of(sign) for sign in gives["code"]], read)


def wrench(given: dict[str, Any], gives: dict[str, Any]) -> Case:
    if "largest_torque_N_m" in given:
        most = newton_metres(given["largest_torque_N_m"])
        call: Call = ("wrench.permitted", {"most": most, "own": None})
        return Case([call], lambda out: [(gives["permitted_deviation"], out[0])])
    if "reference_N_m" in given:
        indicated = {"indicated": given["set_N_m"], "reference": given["reference_N_m"]}
        return Case(
            [("wrench.deviation", indicated)],
            lambda out: [
                (gives["deviation"], out[0]),
                (gives["permitted_0_04"], abs(out[0]) <= 0.04),
            ],
        )
    if "set_N_m" in given:
        setting = {"setting": given["set_N_m"], "share": given["permitted_deviation"]}
        limits = [gives["applied_low_N_m"], gives["applied_high_N_m"]]
        return Case(
            [("wrench.applied", setting)], lambda out: list(zip(limits, out[0], strict=True))
        )
    if "range_low_N_m" in given:
        ends = {
            "wanted": newton_metres(given["wanted_N_m"]),
            "least": newton_metres(given["range_low_N_m"]),
            "most": newton_metres(given["range_high_N_m"]),
        }
        return Case([("wrench.in_range", ends)], lambda out: [(gives["in_range"], out[0])])
    return settable(given, gives)


def settable(given: dict[str, Any], gives: dict[str, Any]) -> Case:
    unit = "N_m" if "wanted_N_m" in given else "lbf_ft"
    wanted, step = given[f"wanted_{unit}"], given[f"graduation_{unit}"]
    return Case(
        [("wrench.settable", {"wanted": wanted, "graduation": step})],
        lambda out: [
            (gives[f"settable_{unit}"], out[0]),
            (gives["error"], (out[0] - wanted) / wanted),
        ],
    )


RULES = {"sequence": sequence, "label": code, "wrench": wrench}

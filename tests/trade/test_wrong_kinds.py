"""Whatever stands where a number or a word belongs, a rule gives something or refuses it."""

import dataclasses
import inspect
import json
import math
import subprocess
from fractions import Fraction
from pathlib import Path
from typing import Any

import pint
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from tools import node
from trade import recorded
from trade.recorded import Rule
from witnessmark.errors import WitnessmarkError
from witnessmark.trade import units

INNER = {"alike", "even_totals", "narrowest", "set_bounds", "set_pick", "set_search"}
INNER |= {"yield_series", "thread_inches"}
"""Rules of these see only what another rule has looked at."""
ASIDE = {"amounts.kind", "assemblies.arranged", "sequence.loosening"}
SET_BY_US = {"what", "least", "most", "first"}
"""Arguments that no person and no program gives."""

RULES = [
    rule
    for rule in recorded.recorded()
    if rule.name.partition(".")[0] not in INNER and rule.name not in ASIDE
]
METRES = pint.UnitRegistry(non_int_type=Fraction)
ODD: st.SearchStrategy[Any] = st.one_of(
    st.none(),
    st.booleans(),
    st.floats(),
    st.integers(),
    st.sampled_from([10**400, -(10**400), 1e300, 5e-324, 1 + 2j, b"1", object(), "9" * 5000]),
    st.sampled_from(["", "x", "N·m", "١٢", "\ud800", "½", "1e400", "NaN", "\u202e5", "5\x00"]),
    st.text(max_size=12),
    st.lists(st.one_of(st.none(), st.floats(), st.text(max_size=3)), max_size=3),
    st.dictionaries(st.text(max_size=3), st.integers(), max_size=2),
    st.sampled_from(["kg", "mm", "N·m", "s"]).map(lambda word: units.quantity(1, word)),
    st.floats().map(lambda number: units._registry().Quantity(number, "millimeter")),
    st.just(METRES.Quantity(1, "meter")),
)


def spoilt(value: Any, odd: Any, draw: Any) -> Any:
    """The odd thing itself, or the value with the odd thing somewhere inside."""
    if isinstance(value, list | tuple) and value and draw(st.booleans()):
        return type(value)([spoilt(value[0], odd, draw), *value[1:]])
    if dataclasses.is_dataclass(value) and draw(st.booleans()):
        names = [field.name for field in dataclasses.fields(value) if field.init]
        return dataclasses.replace(value, **{draw(st.sampled_from(names)): odd})  # type: ignore[type-var]
    return odd


def finite(came: Any) -> bool:
    if isinstance(came, float):
        return math.isfinite(came)
    if isinstance(came, pint.Quantity):
        return math.isfinite(came.magnitude)
    if dataclasses.is_dataclass(came):
        return all(finite(getattr(came, each.name)) for each in dataclasses.fields(came))
    return all(map(finite, came)) if isinstance(came, list | tuple) else True


@settings(
    max_examples=600, deadline=None, derandomize=True, suppress_health_check=list(HealthCheck)
)
@given(rule=st.sampled_from(RULES), odd=ODD, data=st.data())
def test_a_wrong_kind_is_refused_by_name_or_does_no_harm(rule: Rule, odd: Any, data: Any) -> None:
    args = dict(rule.args)
    names = [name for name in args if name not in SET_BY_US]
    if not names:
        return
    name = data.draw(st.sampled_from(names))
    try:
        args[name] = spoilt(args[name], odd, data.draw)
    except WitnessmarkError:
        return
    came = recorded.answer(rule, args)
    if isinstance(came, WitnessmarkError):
        told = came.answer()
        assert all(text.strip() and text.encode() for text in told.values())
        assert len(told["says"]) < 1000
    else:
        assert finite(came)


def test_the_page_refuses_wrong_kinds_by_name() -> None:
    done = subprocess.run(
        [node(), str(Path(__file__).with_name("wrong_kinds.mjs"))],
        capture_output=True, text=True, timeout=240, check=True,
    )  # fmt: skip
    told = json.loads(done.stdout)
    assert told["wrong"] == []
    assert len(told["tried"]) > 200


def test_nearly_every_public_rule_is_tried() -> None:
    tried = {rule.name for rule in RULES} | ASIDE
    public = {name for name, _ in recorded.public().values()}
    missing = {name for name in public - tried if name.partition(".")[0] not in INNER}
    assert missing <= {"units.check", "money.sums", "torque_form.screw_of"}


@pytest.mark.parametrize("rule", RULES, ids=lambda rule: rule.name)
def test_nothing_at_all_is_no_reason_to_break(rule: Rule) -> None:
    for name in dict(rule.args):
        if name not in SET_BY_US:
            came = recorded.answer(rule, dict(rule.args) | {name: None})
            assert isinstance(came, WitnessmarkError) or not inspect.isgenerator(came)

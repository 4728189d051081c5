"""The rules give what was published, on both sides; fixtures/reference names each source."""

import json

import pytest
from trade import reference_frame as frame

GROUPS = [(stem, group) for stem in frame.STEMS for group in frame.groups(stem)]


@pytest.mark.parametrize("side", frame.SIDES)
@pytest.mark.parametrize("stem", frame.STEMS)
def test_published_values_come_out(stem: str, side: str) -> None:
    wrong = [
        f"{each.group['topic']}: {json.dumps(each.case, ensure_ascii=False)}\n  came {each.came}"
        for each in frame.outcomes(stem, side)
        if not each.share <= 1
    ]
    assert not wrong, "\n".join(wrong)


@pytest.mark.parametrize("stem", frame.STEMS)
def test_both_sides_have_the_same_adapters(stem: str) -> None:
    assert (frame.HERE / "reference_rules" / f"{stem}.mjs").is_file()
    assert (frame.REFERENCE / f"{stem}.json").is_file()


@pytest.mark.parametrize(("stem", "group"), GROUPS, ids=[g["topic"] for _, g in GROUPS])
def test_every_published_group_names_its_source(stem: str, group: frame.Case) -> None:
    assert group["rule"] == stem
    assert set(group["source"]) == {"title", "where", "kind", "checked"}
    assert all(text.strip() for text in group["source"].values())
    assert group["cases"]


ELSEWHERE = {
    "log": "tests/log/test_reference.py",
    "qr": "tests/labels/test_symbol.py",
}


def test_every_file_of_published_values_is_run_by_an_adapter() -> None:
    files = {path.stem for path in frame.REFERENCE.glob("*.json")}
    assert files == set(frame.STEMS) | set(ELSEWHERE)
    assert all((frame.HERE.parents[1] / place).is_file() for place in ELSEWHERE.values())

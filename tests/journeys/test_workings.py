"""Workings on the demo workshop: each measured, worked out, kept as a note, without a network."""

from collections.abc import Iterator
from typing import Any

import pytest
from journeys.demo_phone import SIZES, DemoPhone, demo_phone, size
from journeys.test_screens import SPOKEN
from playwright.sync_api import expect

# What is typed into each working, and the headline it must then tell.
TYPED: dict[str, tuple[dict[str, Any], str]] = {
    "convert": ({"amount": "45"}, "33.2"),
    "adapter": ({"wanted": "60", "wrench-length": "400", "adapter-length": "50"}, "53.3"),
    "preload": ({"thread": "M10", "class": "8.8", "torque": "80", "lubricant": "oiled",
                 "value-for": "dry"}, "45.7"),
    "stretch": ({"load": "30", "length": ["30", "12"], "diameter": ["10", "8.593"]}, "0.0862"),
    "clearance": ({"bore": "57.055", "shaft": "57.000", "least": "0.03", "most": "0.06",
                   "bore-sure-to": "0.008", "shaft-sure-to": "0.006"}, "Too close to call"),
    "ratio": ({"bore": "86", "stroke": "86", "chamber": "48", "gasket-thickness": "1.2",
               "piston-below-deck": "0.3", "gasket-bore": "88", "dish": "4.0", "ring-land": "0.5",
               "wanted-ratio": "9.5"}, "9.12"),
    "set": ({"choose": "4", "size": ["187.02", "187.11", "186.96", "187.05", "187.08", "187.21",
                                     "187.00", "187.03", "186.99", "187.15"]}, "1, 7, 8, 9"),
    "bring": ({"needed": "8", "inspected": "32", "rejected": "8", "price-used": "4.00",
               "price-new": "9.50"}, "16"),
    "ring-gap": ({"gap": "0.35", "bore": "86", "bore-change": "0.05"}, "0.51"),
}  # fmt: skip
LAY = """
for (const [name, typed] of Object.entries(given)) {
  await store.setDraft(`workings:${name}`, { typed });
  await store.setDraft(`workings-units:${name.split(':')[0]}`, null);
}
"""
PART = """
for (const row of await store.findRows())
  if (row.heading === 'part' && row.name === 'cylinder head') return row.id;
"""
JOINT = """
for (const row of await store.findRows())
  if (row.heading === 'joint' && row.name === given) return row.id;
"""
NOTES = """
const { part } = await import('/views/part.js');
return part(await store.partSlice(given), given).notes.map((note) => note.text ?? '');
"""


@pytest.fixture(scope="module")
def phone(tmp_path_factory: pytest.TempPathFactory) -> Iterator[DemoPhone]:
    with demo_phone(tmp_path_factory.mktemp("workings")) as one:
        yield one


@pytest.fixture
def typed(phone: DemoPhone) -> None:
    phone.store(LAY, {name: given for name, (given, _) in TYPED.items()})


def test_every_working_of_the_list_is_tried_here(phone: DemoPhone) -> None:
    phone.open("/more")
    phone.page.get_by_role("link", name="Workings").click()
    phone.page.get_by_role("heading", name="Workings").wait_for()
    listed = phone.page.locator("main a.row").evaluate_all(
        "(rows) => rows.map((row) => row.pathname.split('/').pop())"
    )
    assert set(listed) == set(TYPED)


@pytest.mark.parametrize("at", SIZES)
@pytest.mark.parametrize("name", ["", *TYPED])
@pytest.mark.usefixtures("typed")
def test_a_working_holds_in_every_theme_and_with_larger_and_longer_words(
    phone: DemoPhone, name: str, at: str
) -> None:
    size(phone, at)
    phone.open(f"/workings/{name}".rstrip("/"))
    assert phone.wrong(at, phone.jumps()) == {}


@pytest.mark.parametrize("name", TYPED)
def test_each_working_is_done_without_a_network_and_what_is_typed_stays(
    phone: DemoPhone, name: str
) -> None:
    size(phone, "phone")
    phone.store(LAY, {name: {}})
    phone.open(f"/workings/{name}")
    phone.page.context.set_offline(True)
    try:
        given, headline = TYPED[name]
        for ask, value in given.items():
            put(phone, ask, value)
        outcome = phone.page.locator(".lines .line").first
        expect(outcome).to_contain_text(headline)
        expect(phone.page.locator(".act")).to_contain_text(headline)
        phone.page.reload()
        expect(outcome).to_contain_text(headline)
    finally:
        phone.page.context.set_offline(False)


def put(phone: DemoPhone, ask: str, value: Any) -> None:
    if isinstance(value, list):
        for at, each in enumerate(value):
            phone.page.locator(f"#ask-{ask}-{at}").fill(each)
        return
    field = phone.page.locator(f"#ask-{ask}")
    spare = phone.page.get_by_role("button", name="May stay empty")
    if field.count() == 0 and spare.get_attribute("aria-expanded") == "false":
        spare.click()
    if field.evaluate("(one) => one.tagName") == "SELECT":
        field.select_option(value)
    else:
        field.fill(value)


@pytest.mark.usefixtures("typed")
def test_a_caution_stands_before_the_result_the_gravest_first(phone: DemoPhone) -> None:
    phone.open("/workings/preload")
    order = phone.page.locator(".outcome > *").evaluate_all(
        "(all) => all.map((one) => one.className.split(' ')[1] ?? one.className)"
    )
    assert order == ["gone", "warning", "warning", "caution-word", "notice", "lines"] or (
        order[-1] == "lines" and order.index("warning") < order.index("caution-word")
    )


def test_a_refusal_stands_beside_the_field_it_is_about(phone: DemoPhone) -> None:
    phone.store(LAY, {"clearance": {"bore": "57.052,5", "shaft": "57.000"}})
    phone.open("/workings/clearance")
    bore = phone.page.get_by_label("Bore", exact=True)
    assert bore.get_attribute("aria-invalid") == "true"
    told = phone.page.locator(f"#{bore.get_attribute('aria-describedby')}")
    expect(told).to_contain_text("57.052,5 can be 57052.5 mm or 57.0525 mm.")
    assert phone.page.locator(".dock .wanted").is_visible()


def test_the_unit_chosen_beside_a_number_is_used_again(phone: DemoPhone) -> None:
    phone.store(LAY, {"adapter": {}})
    phone.open("/workings/adapter")
    phone.page.get_by_label("Unit of: Wanted at the bolt").select_option("lbf·ft")
    phone.page.get_by_label("Unit of: Wrench length").select_option("in")
    for ask, value in {"wanted": "40", "wrench-length": "12", "adapter-length": "4"}.items():
        put(phone, ask, value)
    line = phone.page.locator(".lines .line").first
    expect(line).to_contain_text("30.0")
    expect(line).to_contain_text("lbf·ft")
    phone.page.get_by_role("button", name="Clear the numbers").click()
    assert phone.page.get_by_label("Unit of: Wrench length").input_value() == "in"
    assert phone.page.locator("#ask-wanted").input_value() == ""


def test_it_is_kept_in_one_tap_on_the_part_it_was_opened_from(phone: DemoPhone) -> None:
    part = phone.store(PART)
    phone.store(LAY, {f"clearance:{part}": TYPED["clearance"][0]})
    phone.open(f"/workings/clearance?about={part}")
    phone.page.get_by_role("button", name="Keep on cylinder head").click()
    phone.page.get_by_role("link", name="Kept on cylinder head.").wait_for()
    notes = phone.store(NOTES, part)
    assert len([note for note in notes if "Clearance: Verdict Too close to call" in note]) == 1
    (note,) = [note for note in notes if note.startswith("Clearance:")]
    for told in ("Bore 57.055 mm", "0.055 mm (0.045 to 0.065)", "Formula: clearance = bore"):
        assert told in note


@pytest.mark.usefixtures("typed")
def test_it_is_kept_on_a_record_that_is_chosen(phone: DemoPhone) -> None:
    phone.open("/workings/adapter")
    phone.page.get_by_role("button", name="Keep as a note").click()
    phone.page.get_by_label("Part or joint").fill("cylinder head")
    phone.page.get_by_role("dialog").get_by_role("button", name="cylinder head").first.click()
    kept = phone.page.get_by_role("link", name="Kept on cylinder head.")
    part = (kept.get_attribute("href") or "").rsplit("/", 1)[-1]
    assert any("Set the wrench to 53.3 N·m" in note for note in phone.store(NOTES, part))


def test_a_joint_lends_its_thread_and_torque(phone: DemoPhone) -> None:
    joint = phone.store(JOINT, "Head bolts")
    phone.open(f"/workings/preload?about={joint}")
    assert phone.page.locator("#ask-thread").input_value() != ""
    assert phone.page.locator("#ask-torque").input_value() != ""
    phone.page.get_by_role("button", name="Keep on ").wait_for()


@pytest.mark.parametrize("about", ["part", "joint"])
def test_a_record_leads_to_the_workings_and_back(phone: DemoPhone, about: str) -> None:
    record = phone.store(PART) if about == "part" else phone.store(JOINT, "Water pump")
    phone.open(f"/{about}/{record}")
    phone.page.get_by_role("link", name="Work out").first.click()
    phone.page.get_by_role("link", name="Adapter").click()
    for ask, value in TYPED["adapter"][0].items():
        put(phone, ask, value)
    phone.page.get_by_role("button", name="Keep on ").wait_for()


@pytest.mark.usefixtures("typed")
def test_enter_goes_from_number_to_number(phone: DemoPhone) -> None:
    phone.open("/workings/adapter")
    phone.page.locator("#ask-wanted").focus()
    phone.page.keyboard.press("Enter")
    assert phone.page.evaluate("document.activeElement.id") == "ask-wrench-length"


@pytest.mark.parametrize("name", ["", "clearance", "set"])
@pytest.mark.usefixtures("typed")
def test_gloves_enlarge_every_target_of_a_working(phone: DemoPhone, name: str) -> None:
    size(phone, "phone")
    phone.open(f"/workings/{name}".rstrip("/"))
    phone.page.evaluate("document.documentElement.dataset.gloves = 'yes'")
    assert phone.measured(desk=False, touch=72, gap=16) == []


@pytest.mark.usefixtures("typed")
def test_a_working_reads_aloud_as_kept(phone: DemoPhone) -> None:
    size(phone, "phone")
    phone.open("/workings/clearance")
    kept = (SPOKEN / "working.txt").read_text("utf-8")
    assert kept == phone.aloud()

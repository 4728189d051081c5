"""Many waiting entries come home, and a second phone hears them all.

WITNESSMARK_MANY says how many; 50 000 was tried, and takes minutes.
"""

import os
from pathlib import Path

from sync.conftest import Phone
from sync.evening import all_equal, plant
from sync.served import Home

MANY = """async ({ count, at }) => {
  const id = () => crypto.randomUUID().replace(/^(.{14})./, '$17');
  for (let from = 0; from < count; from += at)
    await store.takeIn(Array.from({ length: at }, (_, n) => ({
      ...window.pull('f1', { about: `joint-${Math.floor((from + n) / 25)}` }), id: id(),
      device: "018df906-f800-7fdd-9e4f-7ae73514a39b", n: from + n + 1,
      stamp: `018df906f800-${n.toString(16).padStart(4, "0")}`,
      made: '2031-03-07T19:42:10+01:00', v: 1 })));
}"""

COUNT = int(os.environ.get("WITNESSMARK_MANY", "10000"))


def test_very_many_waiting_entries_come_home_past_a_poisoned_one(
    home: Home, phone: Phone, tmp_path: Path
) -> None:
    page = phone(paired=False)
    page.evaluate(MANY, {"count": COUNT // 2, "at": 2500})
    plant(page, "{ body: { run: 'r' } }")
    page.evaluate(MANY, {"count": COUNT // 2, "at": 2500})
    # What waits is counted beside the next write, not before it.
    page.wait_for_function(f"() => window.state().waiting === {COUNT + 1}")
    page.evaluate("code => store.pair({code, name: 'old phone'})", home.store.pairing_code().code)
    other = phone(name="tablet")
    all_refused = "() => store.refused().then((rows) => rows.map(({ code }) => code))"
    page.evaluate("() => store.syncNow()")
    assert page.evaluate(all_refused) == ["field-missing"]
    page.evaluate("async () => store.giveUp((await store.refused())[0].id, 'planted')")
    all_equal(home, tmp_path, [page, other], [])
    assert len(home.log()) == COUNT

"""Takes the README's pictures from the demo workshop: `python tests/take_pictures.py`.

Writes fixtures/pictures/; run it after a change of a screen that the README shows.
"""

import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path[:0] = [str(ROOT / "tests"), str(ROOT / "server")]

from garage import PHONE, QUIET, garage
from playwright.sync_api import sync_playwright
from tools import chromium
from witnessmark.cli.demo import take_demo

PICTURES = ROOT / "fixtures" / "pictures"


def main() -> None:
    PICTURES.mkdir(parents=True, exist_ok=True)
    with tempfile.TemporaryDirectory() as folder, sync_playwright() as player:
        data = Path(folder) / "data"
        take_demo(data, data.with_name("demo.zip"))
        browser = player.chromium.launch(executable_path=chromium(), args=list(QUIET))
        context = browser.new_context(**PHONE, device_scale_factor=2)  # type: ignore[arg-type]
        with garage(data) as house:
            page = context.new_page()
            page.goto(f"{house.address}/pair#{house.pairing()['code']}")
            page.locator(".act[href]").wait_for()
            page.goto(house.address + "/L/7K3MQ2RJ")
            page.get_by_role("heading", level=1).filter(has_text="Cylinder head").wait_for()
            page.get_by_text("5 joints").wait_for()
            page.screenshot(path=PICTURES / "part.png")
            page.locator(".act").first.click()
            page.get_by_text("Go on at 9").click()
            page.get_by_text("Confirm").wait_for()
            page.screenshot(path=PICTURES / "run.png")
            page.goto(house.address + "/find")
            page.get_by_role("searchbox").fill("bin 12")
            page.locator("main a", has_text="bin 12").first.click()
            page.get_by_role("heading", level=1).filter(has_text="in 12").wait_for()
            page.screenshot(path=PICTURES / "holder.png")
        browser.close()


if __name__ == "__main__":
    main()

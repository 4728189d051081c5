"""The face of figures and codes is there, from the network and without one."""

from pathlib import Path

from garage import PHONE, garage
from playwright.sync_api import Browser

FACES = """async () => {
  const faces = [...document.fonts].filter((one) => one.family.includes('Figures'));
  await Promise.allSettled(faces.map((one) => one.load()));
  return faces.map((one) => one.status);
}"""


def test_the_figures_come_in_their_own_face_online_and_offline(
    chrome: Browser, tmp_path: Path
) -> None:
    with garage(tmp_path / "data") as house:
        context = chrome.new_context(**PHONE)
        page = context.new_page()
        page.goto(f"{house.address}/more")
        page.locator("h1").first.wait_for()
        assert page.evaluate(FACES) == ["loaded", "loaded"]
        page.evaluate("navigator.serviceWorker.ready.then(() => undefined)")
        page.wait_for_function("navigator.serviceWorker.controller !== null")
        context.set_offline(True)
        page.reload()
        page.locator("h1").first.wait_for()
        assert page.evaluate(FACES) == ["loaded", "loaded"]
        context.close()

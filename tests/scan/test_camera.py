"""The scanner in a real browser, through a camera that plays a film."""

from typing import TYPE_CHECKING

import numpy as np
from bench.label_damage import Label
from bench.label_frames import draw_scene

if TYPE_CHECKING:
    from scan.conftest import Camera

LABEL = Label(code="7K3MQ2RJ")


def test_a_label_held_before_the_camera_is_read(camera: "Camera") -> None:
    picture, _ = draw_scene(LABEL, np.random.default_rng(1))
    with camera([picture]) as page:
        page.wait_for_function("told.reads.length >= 3")
        told = page.evaluate("told")
    assert {code["code"] for read in told["reads"] for code in read["codes"]} == {"7K3MQ2RJ"}
    assert told["states"] == ["starting", "looking"]


def test_a_code_of_somebody_else_is_told_and_not_read(camera: "Camera") -> None:
    stranger = Label(code="7K3MQ2RJ", address="HTTPS://EXAMPLE.TEST/MENU/")
    picture, _ = draw_scene(stranger, np.random.default_rng(1))
    with camera([picture]) as page:
        page.wait_for_function("told.others.length > 0")
        told = page.evaluate("told")
    assert told["reads"] == []
    assert {other["why"] for other in told["others"]} == {"not-ours"}

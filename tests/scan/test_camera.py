"""The scanner in a real browser, through a camera that plays a film."""

import base64
from typing import TYPE_CHECKING

import cv2
import numpy as np
from bench.label_damage import Label, draw
from bench.label_frames import Pose, bench_top, draw_scene, make_case, place

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


def test_a_smeared_twin_label_is_read_within_the_patience_of_a_person(camera: "Camera") -> None:
    case = make_case("smear20", 4, 1, 2)
    with camera(list(case.frames(3))) as page:
        page.wait_for_function("told.reads.length > 0")
        told = page.evaluate("told")
    assert {code["code"] for read in told["reads"] for code in read["codes"]} == set(case.codes)


def test_a_label_that_nobody_can_read_is_called_hard_after_three_seconds(camera: "Camera") -> None:
    drawing = draw(LABEL)
    dots = np.random.default_rng(2).integers(0, 2, (12, 12, 3), np.uint8)[:, :, :1] * 230
    middle = slice(13 * 24, 33 * 24)
    drawing.image[middle, middle] = np.kron(dots, np.ones((40, 40, 3), np.uint8))
    ground = bench_top(np.random.default_rng(1))[:720, :1280]
    picture, _ = place(ground, drawing, Pose(6.0, 5.0, 5.0, 40.0))
    with camera([picture]) as page:
        page.wait_for_function("told.states.includes('hard')")
        told = page.evaluate("told")
    assert told["reads"] == []
    assert told["states"][:3] == ["starting", "looking", "hard"]


def test_a_label_on_a_photo_is_read(camera: "Camera") -> None:
    picture, _ = draw_scene(LABEL, np.random.default_rng(1))
    photo = base64.b64encode(cv2.imencode(".jpg", picture)[1].tobytes()).decode()
    with camera([picture]) as page:
        codes = page.evaluate(
            """async (photo) => {
                const bytes = Uint8Array.from(atob(photo), (sign) => sign.charCodeAt(0));
                return readImage(new Blob([bytes], { type: 'image/jpeg' }));
            }""",
            photo,
        )
    assert [code["code"] for code in codes] == ["7K3MQ2RJ"]


def test_a_wedge_reader_types_a_label_and_leaves_nothing_in_the_field(camera: "Camera") -> None:
    picture, _ = draw_scene(LABEL, np.random.default_rng(1))
    with camera([picture]) as page:
        left = page.evaluate(
            """(typed) => {
                // The browser's own keys come too slowly while other tests run beside this one.
                const field = document.body.appendChild(document.createElement('input'));
                field.value = `note ${typed}`;
                for (const key of [...typed, 'Enter']) {
                    field.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true }));
                }
                return field.value;
            }""",
            "HTTPS://SHED1.LOCAL:8443/L/7K3MQ2RJ",
        )
        assert page.evaluate("told.typed") == ["7K3MQ2RJ"]
    assert left == "note "

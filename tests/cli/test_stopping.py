"""A request to stop is never lost and never breaks in where it would leave a half behind."""

import pytest
from witnessmark.cli.stopping import Stopping


def test_while_doors_open_a_request_waits_and_then_breaks_in() -> None:
    stopping = Stopping()
    stopping.ask()
    with pytest.raises(KeyboardInterrupt), stopping.at_once():
        raise AssertionError("served although the end was asked for")


def test_while_serving_a_request_breaks_in() -> None:
    stopping = Stopping()
    with pytest.raises(KeyboardInterrupt), stopping.at_once():
        stopping.ask()


def test_a_second_request_does_not_disturb_the_closing() -> None:
    stopping = Stopping()
    with pytest.raises(KeyboardInterrupt), stopping.at_once():
        stopping.ask()
    stopping.ask()

"""Devices of the workshop: a list, a name, an end."""

from dataclasses import asdict
from typing import Any

from flask import Response

from witnessmark.api.body import json_object
from witnessmark.api.keys import bearer, store
from witnessmark.api.pairing import device_name
from witnessmark.api.routing import Routes, tell
from witnessmark.api.shapes import DeviceList, DeviceName, DeviceShape
from witnessmark.store import Device

routes = Routes("devices", "Who is paired with this workshop.")


@routes.get("/devices", told=DeviceList)
def devices() -> Response:
    """List the devices, with holes and doubles in their own counts."""
    return tell({"devices": [_told(one) for one in store().devices(bearer().workshop)]})


@routes.patch("/devices/<device>", wanted=DeviceName, told=DeviceShape)
def rename(device: str) -> Response:
    """Give a device another name."""
    name = device_name(json_object())
    return tell(_told(store().rename(device, name, bearer().workshop)))


@routes.post("/devices/<device>/revoke", told=DeviceShape)
def revoke(device: str) -> Response:
    """End a device's pairing; what it sent stays, what it holds can still be rescued."""
    return tell(_told(store().revoke(device, bearer().workshop)))


def _told(one: Device) -> dict[str, Any]:
    return {**asdict(one), "this": one.id == bearer().device}

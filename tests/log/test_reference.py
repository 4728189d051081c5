"""Published values for ids, hashes, canonical text and stamps, by the rules of both sides.

The groups that only try a library (gzip, CRC-32, HMAC, signatures) are run on that library, so
that a computer whose own is broken is found out here.
"""

import gzip
import hmac
import json
import subprocess
import zlib
from hashlib import sha256
from pathlib import Path
from typing import Any

import pytest
from cryptography.exceptions import InvalidSignature
from cryptography.hazmat.primitives.asymmetric import ec, utils
from cryptography.hazmat.primitives.hashes import SHA256
from tools import node
from witnessmark.errors import WitnessmarkError
from witnessmark.log import clean, ids, stamp

HERE = Path(__file__).parent
GROUPS = json.loads((HERE.parents[1] / "fixtures/reference/log.json").read_text("utf-8"))


def uuid_case(given: dict[str, Any]) -> dict[str, Any]:
    if "uuid" in given:
        facts = ids.id_facts(given["uuid"])
        if not ids.is_uuid7(given["uuid"].lower()):
            return {"version": facts.version, "version_7": False}
        return {"unix_ms": facts.unix_ms, "version": facts.version, "variant": facts.variant}
    random = f"0{given.get('rand_a_hex', '000')}{given.get('rand_b_hex', '0' * 16)}"
    return {"uuid": ids.uuid7(given["unix_ms"], bytes.fromhex(random))}


def gzip_case(given: dict[str, Any]) -> dict[str, Any]:
    if "bytes_hex" in given:
        gzip.decompress(bytes.fromhex(given["bytes_hex"]) + bytes(16))
    packed = gzip.compress(given["text"].encode())
    return {"first_bytes_hex": packed[:3].hex(), "trailer_hex": packed[-8:].hex()}


def signature_case(given: dict[str, Any]) -> dict[str, Any]:
    point = ec.EllipticCurvePublicNumbers(
        int(given["public_x_hex"], 16), int(given["public_y_hex"], 16), ec.SECP256R1()
    )
    both = given["signature_r_s_hex"]
    signature = utils.encode_dss_signature(int(both[:64], 16), int(both[64:], 16))
    try:
        point.public_key().verify(signature, given["text"].encode(), ec.ECDSA(SHA256()))
    except InvalidSignature:
        return {"genuine": False}
    return {"genuine": True}


def stamp_case(given: dict[str, Any]) -> dict[str, Any]:
    clock = stamp.seen(stamp.Clock(given["last_stamp"]), given.get("seen_stamp", ""))
    return {"stamp": stamp.next_stamp(clock.last, given["clock_ms"])}


def hashed(text: str) -> str:
    return sha256(text.encode()).hexdigest()


RULES: dict[str, Any] = {
    "UUID version 7": uuid_case,
    "CRC-32": lambda given: {"crc32_hex": f"{zlib.crc32(given['text'].encode()):08x}"},
    "gzip member": gzip_case,
    "SHA-256": lambda given: {"sha256_hex": hashed(given["text"])},
    "Canonical text of an entry": lambda given: {
        "text": (text := clean.canonical(given["entry"])),
        "sha256_hex": hashed(text),
    },
    "Stamps of a hybrid clock": stamp_case,
    "Signature check, P-256 with SHA-256": signature_case,
    "HMAC-SHA-256": lambda given: {
        "hmac_hex": hmac.digest(
            bytes.fromhex(given["key_hex"]), given["text"].encode(), "sha256"
        ).hex()
    },
}


def answer(topic: str, given: dict[str, Any]) -> dict[str, Any]:
    try:
        return dict(RULES[topic](given))
    except (WitnessmarkError, OSError) as refused:
        return {"refused": getattr(refused, "code", "unknown")}


def agrees(gives: dict[str, Any], actual: dict[str, Any]) -> bool:
    if "refused" in gives:
        return "refused" in actual
    return all(actual[key] == value for key, value in gives.items())


@pytest.mark.parametrize("group", GROUPS, ids=lambda group: group["topic"])
def test_python_gives_the_published_values(group: dict[str, Any]) -> None:
    for case in group["cases"]:
        actual = answer(group["topic"], case["given"])
        assert agrees(case["gives"], actual), (group["source"]["title"], case, actual)


def test_javascript_gives_the_published_values() -> None:
    run = subprocess.run(
        [node(), str(HERE / "reference.mjs")], capture_output=True, check=True, encoding="utf-8"
    )
    answers = json.loads(run.stdout)
    assert len(answers) == 4
    for group in GROUPS:
        for case, actual in zip(group["cases"], answers.get(group["topic"], []), strict=False):
            assert agrees(case["gives"], actual), (group["source"]["title"], case, actual)

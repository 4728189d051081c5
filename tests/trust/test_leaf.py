"""The server's certificate: right names, right length, renewed by itself, never without need."""

import os
import ssl
import stat
from datetime import UTC, datetime, timedelta
from ipaddress import ip_address
from pathlib import Path

import pytest
from cryptography import x509
from cryptography.x509.oid import ExtendedKeyUsageOID
from trust.hand_shake import shake
from witnessmark.trust.authority import Authority, kept_authority, make_authority
from witnessmark.trust.errors import CertificateUnreadable
from witnessmark.trust.folder import TrustFolder, trust_folder
from witnessmark.trust.leaf import Standing, first_name, issue, keep_leaf, load, server_context

NOW = datetime.now(UTC)
HOME = Standing("bokal", (ip_address("192.168.1.20"), ip_address("fd00::2")))
DAY = timedelta(days=1)


@pytest.fixture
def folder(tmp_path: Path) -> TrustFolder:
    return trust_folder(tmp_path)


@pytest.fixture
def authority(folder: TrustFolder) -> Authority:
    made = kept_authority(folder, "bokal", NOW)
    (folder.path / "ca.pem").write_bytes(made.pem)
    return made


def leaf_of(folder: TrustFolder) -> x509.Certificate:
    return x509.load_pem_x509_certificates(folder.leaf.read_bytes())[0]


@pytest.mark.parametrize(
    "name", ["bokal.local", "localhost", "127.0.0.1", "::1", "192.168.1.20", "fd00::2"]
)
def test_a_client_who_trusts_the_authority_accepts_every_name_of_ours(
    folder: TrustFolder, authority: Authority, name: str
) -> None:
    keep_leaf(folder, authority, HOME, NOW)
    assert shake(server_context(str(folder.leaf)), folder.path / "ca.pem", name) == "TLSv1.3"


@pytest.mark.parametrize("name", ["other.local", "bokal.example", "192.168.1.21"])
def test_a_wrong_name_is_refused(folder: TrustFolder, authority: Authority, name: str) -> None:
    keep_leaf(folder, authority, HOME, NOW)
    with pytest.raises(ssl.SSLCertVerificationError, match="mismatch"):
        shake(server_context(str(folder.leaf)), folder.path / "ca.pem", name)


def test_a_client_who_does_not_know_the_authority_refuses(
    folder: TrustFolder, authority: Authority
) -> None:
    keep_leaf(folder, authority, HOME, NOW)
    stranger = folder.path / "stranger.pem"
    stranger.write_bytes(make_authority("bokal", NOW).pem)
    for trusted in (None, stranger):
        with pytest.raises(ssl.SSLCertVerificationError, match="verify failed"):
            shake(server_context(str(folder.leaf)), trusted, "bokal.local")


def test_the_leaf_keeps_the_rules_of_strict_phones(
    folder: TrustFolder, authority: Authority
) -> None:
    keep_leaf(folder, authority, HOME, NOW)
    leaf = leaf_of(folder)
    length = leaf.not_valid_after_utc - leaf.not_valid_before_utc
    assert length == timedelta(days=397) < timedelta(days=825)
    usage = leaf.extensions.get_extension_for_class(x509.ExtendedKeyUsage).value
    assert list(usage) == [ExtendedKeyUsageOID.SERVER_AUTH]
    assert leaf.signature_hash_algorithm is not None
    assert leaf.signature_hash_algorithm.name == "sha256"


def test_the_key_of_the_leaf_is_closed_too(folder: TrustFolder, authority: Authority) -> None:
    keep_leaf(folder, authority, HOME, NOW)
    assert stat.S_IMODE(os.stat(folder.leaf).st_mode) == 0o600


def test_nothing_is_renewed_without_need(folder: TrustFolder, authority: Authority) -> None:
    assert keep_leaf(folder, authority, HOME, NOW)
    assert not keep_leaf(folder, authority, HOME, NOW + 300 * DAY)


@pytest.mark.parametrize(("days", "is_renewed"), [(336, False), (337, True), (500, True)])
def test_under_sixty_days_left_a_new_one_is_made(
    folder: TrustFolder, authority: Authority, days: int, *, is_renewed: bool
) -> None:
    keep_leaf(folder, authority, HOME, NOW)
    assert keep_leaf(folder, authority, HOME, NOW + days * DAY) is is_renewed


def test_new_addresses_bring_a_new_leaf(folder: TrustFolder, authority: Authority) -> None:
    keep_leaf(folder, authority, HOME, NOW)
    moved = Standing("bokal", (ip_address("10.0.0.7"),))
    assert keep_leaf(folder, authority, moved, NOW)
    assert shake(server_context(str(folder.leaf)), folder.path / "ca.pem", "10.0.0.7")


def test_a_leaf_from_the_future_is_made_anew(folder: TrustFolder, authority: Authority) -> None:
    keep_leaf(folder, authority, HOME, NOW)
    assert keep_leaf(folder, authority, HOME, NOW - DAY)


@pytest.mark.parametrize("damage", [b"", b"not a certificate", b"-----BEGIN CERTIFICATE-----"])
def test_a_broken_leaf_is_made_anew(
    folder: TrustFolder, authority: Authority, damage: bytes
) -> None:
    folder.leaf.write_bytes(damage)
    assert keep_leaf(folder, authority, HOME, NOW)


def test_a_leaf_of_another_authority_is_made_anew(
    folder: TrustFolder, authority: Authority
) -> None:
    folder.leaf.write_bytes(issue(make_authority("bokal", NOW), HOME, NOW))
    assert keep_leaf(folder, authority, HOME, NOW)


def test_near_its_own_end_the_authority_gives_what_it_has_and_not_again(
    folder: TrustFolder, authority: Authority
) -> None:
    last = authority.certificate.not_valid_after_utc
    late = last - 30 * DAY
    keep_leaf(folder, authority, HOME, late)
    assert leaf_of(folder).not_valid_after_utc == last
    assert not keep_leaf(folder, authority, HOME, late)


def test_a_context_that_serves_shows_the_new_leaf_at_once(
    folder: TrustFolder, authority: Authority
) -> None:
    keep_leaf(folder, authority, HOME, NOW)
    context = server_context(str(folder.leaf))
    keep_leaf(folder, authority, Standing("bokal", (ip_address("10.0.0.7"),)), NOW)
    load(context, str(folder.leaf))
    assert shake(context, folder.path / "ca.pem", "10.0.0.7")


def test_the_owners_certificate_tells_the_name_it_is_for(
    folder: TrustFolder, authority: Authority
) -> None:
    keep_leaf(folder, authority, HOME, NOW)
    assert first_name(str(folder.leaf)) == "bokal.local"
    assert first_name(str(folder.path / "ca.pem")) is None
    with pytest.raises(CertificateUnreadable):
        first_name(str(folder.path / "nothing.pem"))


def test_the_owners_certificate_and_key_must_belong_together(
    folder: TrustFolder, authority: Authority
) -> None:
    keep_leaf(folder, authority, HOME, NOW)
    with pytest.raises(CertificateUnreadable):
        server_context(str(folder.leaf), str(folder.authority))

"""The workshop's own authority: made once, kept closed, able to vouch for home and nothing else."""

import os
import ssl
import stat
import subprocess
from datetime import UTC, datetime, timedelta
from ipaddress import ip_address
from pathlib import Path

import pytest
from cryptography import x509
from cryptography.hazmat.primitives.asymmetric import ec
from trust.hand_shake import shake
from witnessmark.trust.authority import Authority, kept_authority, key_text, make_authority
from witnessmark.trust.errors import AuthorityEnded, AuthorityUnreadable
from witnessmark.trust.folder import TrustFolder, trust_folder
from witnessmark.trust.leaf import Standing, issue, server_context

NOW = datetime(2031, 3, 7, 18, 42, tzinfo=UTC)


@pytest.fixture
def folder(tmp_path: Path) -> TrustFolder:
    return trust_folder(tmp_path)


def issued(folder: TrustFolder, authority: Authority, names: list[x509.GeneralName]) -> Path:
    """A leaf for any names at all, as a thief of the key would make it."""

    class Anything(Standing):
        @property
        def names(self) -> x509.SubjectAlternativeName:
            return x509.SubjectAlternativeName(names)

    path = folder.path / "other.pem"
    path.write_bytes(issue(authority, Anything("bokal", ()), datetime.now(UTC)))
    return path


def test_the_authority_is_made_once_and_then_kept(folder: TrustFolder) -> None:
    made = kept_authority(folder, "bokal", NOW)
    again = kept_authority(folder, "other", NOW + timedelta(days=3000))
    assert again.der == made.der


def test_only_the_owner_may_read_the_key(folder: TrustFolder) -> None:
    kept_authority(folder, "bokal", NOW)
    assert stat.S_IMODE(os.stat(folder.authority).st_mode) == 0o600
    assert stat.S_IMODE(os.stat(folder.path).st_mode) == 0o700


def test_the_certificate_says_what_phones_must_know() -> None:
    made = make_authority("bokal", NOW).certificate
    basic = made.extensions.get_extension_for_class(x509.BasicConstraints)
    assert basic.critical
    assert (basic.value.ca, basic.value.path_length) == (True, 0)
    usage = made.extensions.get_extension_for_class(x509.KeyUsage)
    assert usage.critical
    assert usage.value.key_cert_sign
    key = made.public_key()
    assert isinstance(key, ec.EllipticCurvePublicKey)
    assert isinstance(key.curve, ec.SECP256R1)
    years = (made.not_valid_after_utc - NOW).days / 365.25
    assert 9.99 < years < 10.01


def test_name_constraints_are_critical_and_name_home_only() -> None:
    made = make_authority("bokal", NOW).certificate
    limits = made.extensions.get_extension_for_class(x509.NameConstraints)
    assert limits.critical
    permitted = limits.value.permitted_subtrees
    assert permitted is not None
    names = [item.value for item in permitted if isinstance(item, x509.DNSName)]
    assert names == ["local", "localhost"]
    networks = [item.value for item in permitted if isinstance(item, x509.IPAddress)]
    assert not any(ip_address("8.8.8.8") in network for network in networks)
    assert any(ip_address("192.168.1.20") in network for network in networks)


@pytest.mark.parametrize(
    ("name", "host"),
    [
        (x509.DNSName("bank.example"), "bank.example"),
        (x509.IPAddress(ip_address("8.8.8.8")), "8.8.8.8"),
        (x509.IPAddress(ip_address("2001:db8::1")), "2001:db8::1"),
    ],
)
def test_even_a_stolen_key_cannot_stand_in_for_another_site(
    folder: TrustFolder, name: x509.GeneralName, host: str
) -> None:
    authority = kept_authority(folder, "bokal", datetime.now(UTC))
    (folder.path / "ca.pem").write_bytes(authority.pem)
    stolen = issued(folder, authority, [name])
    with pytest.raises(ssl.SSLCertVerificationError, match="permitted subtree violation"):
        shake(server_context(str(stolen)), folder.path / "ca.pem", host)


def test_openssl_reads_the_authority_and_finds_the_leaf_good(folder: TrustFolder) -> None:
    authority = kept_authority(folder, "bokal", datetime.now(UTC))
    (folder.path / "ca.pem").write_bytes(authority.pem)
    standing = Standing("bokal", (ip_address("192.168.1.20"),))
    folder.leaf.write_bytes(issue(authority, standing, datetime.now(UTC)))
    told = subprocess.run(
        ["openssl", "verify", "-x509_strict", "-purpose", "sslserver", "-verify_hostname",
         "bokal.local", "-CAfile", str(folder.path / "ca.pem"), str(folder.leaf)],
        capture_output=True, text=True, check=False,
    )  # fmt: skip
    assert told.stdout.endswith(": OK\n"), told.stdout + told.stderr


def test_a_broken_authority_is_never_remade_by_accident(folder: TrustFolder) -> None:
    kept_authority(folder, "bokal", NOW)
    folder.authority.write_bytes(folder.authority.read_bytes()[:300])
    before = folder.authority.read_bytes()
    with pytest.raises(AuthorityUnreadable) as refused:
        kept_authority(folder, "bokal", NOW)
    assert str(folder.authority) in refused.value.sentence
    assert folder.authority.read_bytes() == before


def test_a_key_that_is_not_the_certificates_is_seen(folder: TrustFolder) -> None:
    one, other = make_authority("bokal", NOW), make_authority("bokal", NOW)
    folder.authority.write_bytes(key_text(one.key) + other.pem)
    with pytest.raises(AuthorityUnreadable):
        kept_authority(folder, "bokal", NOW)


def test_after_ten_years_the_owner_is_told_and_nothing_is_replaced(folder: TrustFolder) -> None:
    made = kept_authority(folder, "bokal", NOW)
    with pytest.raises(AuthorityEnded) as refused:
        kept_authority(folder, "bokal", NOW + timedelta(days=3653))
    assert "2041-03-0" in refused.value.sentence
    assert made.pem in folder.authority.read_bytes()


def test_the_fingerprint_stands_in_pairs_as_phones_show_it() -> None:
    pairs = make_authority("bokal", NOW).fingerprint.split(":")
    assert len(pairs) == 32
    assert all(len(pair) == 2 and pair == pair.upper() for pair in pairs)

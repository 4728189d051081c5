"""The workshop's own certificate authority: made once at first start, kept for ten years."""

from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

from cryptography import x509
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.x509.oid import NameOID

from witnessmark.trust.addresses import HOME
from witnessmark.trust.errors import AuthorityEnded, AuthorityUnreadable
from witnessmark.trust.folder import TrustFolder, write_whole

LASTS = timedelta(days=3652)
# A phone whose clock is a little slow must not find a certificate that begins in its future.
EARLIER = timedelta(hours=1)


@dataclass(frozen=True, slots=True)
class Authority:
    """A key that vouches, and the certificate that phones are told to trust."""

    key: ec.EllipticCurvePrivateKey
    certificate: x509.Certificate

    @property
    def pem(self) -> bytes:
        """The certificate as text."""
        return self.certificate.public_bytes(serialization.Encoding.PEM)

    @property
    def der(self) -> bytes:
        """The certificate as phones install it."""
        return self.certificate.public_bytes(serialization.Encoding.DER)

    @property
    def fingerprint(self) -> str:
        """SHA-256 of the certificate, in pairs, as phones show it."""
        return self.certificate.fingerprint(hashes.SHA256()).hex(":").upper()


def key_text(key: ec.EllipticCurvePrivateKey) -> bytes:
    """A private key as PEM, not encrypted: the file's mode is its only guard."""
    return key.private_bytes(
        serialization.Encoding.PEM,
        serialization.PrivateFormat.PKCS8,
        serialization.NoEncryption(),
    )


def make_authority(name: str, now: datetime) -> Authority:
    """A new authority that can vouch for names and addresses at home, and for nothing else.

    The critical name constraints mean that even a stolen key cannot stand in for any other site.
    """
    key = ec.generate_private_key(ec.SECP256R1())
    subject = x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, f"Witnessmark workshop {name}")])
    permitted = [x509.DNSName("local"), x509.DNSName("localhost")]
    usage = x509.KeyUsage(
        digital_signature=True,
        key_cert_sign=True,
        crl_sign=True,
        content_commitment=False,
        key_encipherment=False,
        data_encipherment=False,
        key_agreement=False,
        encipher_only=False,
        decipher_only=False,
    )
    certificate = (
        x509.CertificateBuilder()
        .subject_name(subject)
        .issuer_name(subject)
        .public_key(key.public_key())
        .serial_number(x509.random_serial_number())
        .not_valid_before(now - EARLIER)
        .not_valid_after(now + LASTS)
        .add_extension(x509.BasicConstraints(ca=True, path_length=0), critical=True)
        .add_extension(usage, critical=True)
        .add_extension(x509.SubjectKeyIdentifier.from_public_key(key.public_key()), critical=False)
        .add_extension(
            x509.NameConstraints([*permitted, *map(x509.IPAddress, HOME)], None), critical=True
        )
        .sign(key, hashes.SHA256())
    )
    return Authority(key, certificate)


def kept_authority(folder: TrustFolder, name: str, now: datetime) -> Authority:
    """The authority of the folder; made only where there is none.

    raises: AuthorityUnreadable, AuthorityEnded. It is never remade for the owner, because every
    phone would then have to be told anew.
    """
    if not folder.authority.exists():
        made = make_authority(name, now)
        write_whole(folder.authority, key_text(made.key) + made.pem)
    authority = _read(folder)
    ends = authority.certificate.not_valid_after_utc
    if ends <= now:
        raise AuthorityEnded(day=ends.date().isoformat(), path=str(folder.authority))
    return authority


def _read(folder: TrustFolder) -> Authority:
    """The authority as it lies in the file."""
    content = folder.authority.read_bytes()
    try:
        key = serialization.load_pem_private_key(content, password=None)
        certificate = x509.load_pem_x509_certificate(content)
    except (ValueError, TypeError) as broken:
        raise AuthorityUnreadable(path=str(folder.authority)) from broken
    if (
        not isinstance(key, ec.EllipticCurvePrivateKey)
        or key.public_key() != certificate.public_key()
    ):
        raise AuthorityUnreadable(path=str(folder.authority))
    return Authority(key, certificate)


def now_utc() -> datetime:
    """The computer's clock; the one place where trust reads it."""
    return datetime.now(UTC)

"""The server's own certificate: names and addresses of this computer, renewed by itself."""

import ssl
from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path

from cryptography import x509
from cryptography.exceptions import InvalidSignature
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.x509.oid import ExtendedKeyUsageOID, NameOID

from witnessmark.trust.addresses import LOOPBACK, Address
from witnessmark.trust.authority import EARLIER, Authority, key_text
from witnessmark.trust.errors import CertificateUnreadable
from witnessmark.trust.folder import TrustFolder, write_whole

# Phones refuse a server certificate of more than 825 days; browsers are going lower.
LASTS = timedelta(days=397)
RENEWED_BEFORE_END = timedelta(days=60)


@dataclass(frozen=True, slots=True)
class Standing:
    """What a leaf must say to be good for this computer now."""

    name: str
    addresses: tuple[Address, ...]

    @property
    def host(self) -> str:
        """The name with its network ending."""
        return f"{self.name}.local"

    @property
    def names(self) -> x509.SubjectAlternativeName:
        """The certificate's list of names and addresses."""
        addresses = dict.fromkeys((*self.addresses, *LOOPBACK))
        return x509.SubjectAlternativeName(
            [
                x509.DNSName(self.host),
                x509.DNSName("localhost"),
                *(x509.IPAddress(address) for address in addresses),
            ]
        )


def issue(authority: Authority, standing: Standing, now: datetime) -> bytes:
    """A fresh key and a certificate for it, as one PEM text with the authority's at its end."""
    key = ec.generate_private_key(ec.SECP256R1())
    begins = now - EARLIER
    ends = min(begins + LASTS, authority.certificate.not_valid_after_utc)
    certificate = (
        x509.CertificateBuilder()
        .subject_name(x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, standing.host)]))
        .issuer_name(authority.certificate.subject)
        .public_key(key.public_key())
        .serial_number(x509.random_serial_number())
        .not_valid_before(begins)
        .not_valid_after(ends)
        .add_extension(standing.names, critical=False)
        .add_extension(x509.BasicConstraints(ca=False, path_length=None), critical=True)
        .add_extension(x509.ExtendedKeyUsage([ExtendedKeyUsageOID.SERVER_AUTH]), critical=False)
        .add_extension(x509.SubjectKeyIdentifier.from_public_key(key.public_key()), critical=False)
        .add_extension(
            x509.AuthorityKeyIdentifier.from_issuer_public_key(authority.key.public_key()),
            critical=False,
        )
        .sign(authority.key, hashes.SHA256())
    )
    text = certificate.public_bytes(serialization.Encoding.PEM)
    return key_text(key) + text + authority.pem


def is_good(content: bytes, authority: Authority, standing: Standing, now: datetime) -> bool:
    """Whether a kept leaf still serves: ours, for these names, neither too new nor near its end."""
    try:
        leaf = x509.load_pem_x509_certificates(content)[0]
        key = serialization.load_pem_private_key(content, password=None)
        leaf.verify_directly_issued_by(authority.certificate)
        names = leaf.extensions.get_extension_for_class(x509.SubjectAlternativeName).value
    except (ValueError, TypeError, IndexError, InvalidSignature, x509.ExtensionNotFound):
        return False
    last_of_all = authority.certificate.not_valid_after_utc
    is_late = leaf.not_valid_after_utc - now < RENEWED_BEFORE_END
    return (
        key.public_key() == leaf.public_key()
        and set(names) == set(standing.names)
        and leaf.not_valid_before_utc <= now < leaf.not_valid_after_utc
        and not (is_late and leaf.not_valid_after_utc < last_of_all)
    )


def keep_leaf(folder: TrustFolder, authority: Authority, standing: Standing, now: datetime) -> bool:
    """See that the folder's leaf is good; tells whether a new one was made."""
    path = folder.leaf
    if path.exists() and is_good(path.read_bytes(), authority, standing, now):
        return False
    write_whole(path, issue(authority, standing, now))
    return True


def server_context(cert: str, key: str | None = None) -> ssl.SSLContext:
    """TLS as a server speaks it, with this certificate.

    raises: CertificateUnreadable.
    """
    context = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER)
    context.minimum_version = ssl.TLSVersion.TLSv1_2
    load(context, cert, key)
    return context


def first_name(cert: str) -> str | None:
    """The first whole name a certificate is for, so that an owner's own need not be told twice.

    raises: CertificateUnreadable.
    """
    try:
        leaf = x509.load_pem_x509_certificates(Path(cert).read_bytes())[0]
        names = leaf.extensions.get_extension_for_class(x509.SubjectAlternativeName).value
    except (OSError, ValueError, IndexError) as broken:
        raise CertificateUnreadable(cert=cert, key=cert) from broken
    except x509.ExtensionNotFound:
        return None
    whole = (name for name in names.get_values_for_type(x509.DNSName) if "*" not in name)
    return next(whole, None)


def load(context: ssl.SSLContext, cert: str, key: str | None = None) -> None:
    """Give a context, also one that is serving, the certificate for the hand-shakes to come."""
    try:
        context.load_cert_chain(cert, key)
    except (ssl.SSLError, OSError) as broken:
        raise CertificateUnreadable(cert=cert, key=key or cert) from broken

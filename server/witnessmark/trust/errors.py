"""What can be in the way of trust, each with a sentence and the next step."""

from witnessmark.errors import WitnessmarkError


class TrustError(WitnessmarkError):
    """Base of everything that trust refuses."""

    code = "trust"
    says = "Phones cannot be given a reason to trust this computer."
    next_step = "Look at the sentence before this one."


class NameNotFit(TrustError):
    """The name asked for cannot stand on a label or on the network."""

    code = "trust-name-not-fit"
    says = "'{name}' cannot be this computer's name."
    next_step = "Choose 1 to {longest} letters from a to z."


class AuthorityUnreadable(TrustError):
    """The authority's file is there and cannot be used; it is never remade by accident."""

    code = "trust-authority-unreadable"
    says = "The workshop's own authority in {path} cannot be read."
    next_step = (
        "Bring the file back from a backup. Or move it away to make a new authority; "
        "every phone must then be told to trust the new one."
    )


class AuthorityEnded(TrustError):
    """The authority's ten years are over."""

    code = "trust-authority-ended"
    says = "The workshop's own authority ended on {day}."
    next_step = (
        "Check this computer's date. If it is right, move {path} away and start again; "
        "every phone must then be told to trust the new authority."
    )


class CertificateUnreadable(TrustError):
    """The owner's own certificate or key cannot be used."""

    code = "trust-certificate-unreadable"
    says = "The certificate {cert} and the key {key} cannot be used together."
    next_step = "Give both as PEM files that belong to each other."

"""What a person does on each system to trust the workshop, in the order of doing it.

Menu names are those of current systems, from memory; makers move them now and then.
"""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Way:
    """The way through one system's menus."""

    word: str
    title: str
    signs: tuple[str, ...]  # what the browser calls itself there
    steps: tuple[str, ...]
    note: str = ""


# The first whose sign is found in the browser's own name is shown first; Android also says Linux.
WAYS: tuple[Way, ...] = (
    Way(
        "android",
        "Android",
        ("Android",),
        (
            "Tap **Get the certificate** above. The file lands in *Downloads*.",
            "Open *Settings*, then *Security & privacy*, *More security*, "
            "*Encryption & credentials*, *Install a certificate*, *CA certificate*.",
            "Tap *Install anyway*. The phone asks for its screen lock; it needs one.",
            "Choose the file **ca.crt** in *Downloads*.",
            "Open {address} in Chrome, then menu, *Add to Home screen*, *Install*.",
        ),
        "From then on Android notes that the network may be monitored. It says so for every "
        "certificate of your own; what this one may do stands above.",
    ),
    Way(
        "ios",
        "iPhone and iPad",
        ("iPhone", "iPad"),
        (
            "Open this page in **Safari**, tap **Get the certificate** above, and allow it.",
            "Open *Settings*, tap *Profile Downloaded* near the top, then *Install*.",
            "Open *Settings*, *General*, *About*, *Certificate Trust Settings*, and switch "
            "**this certificate on**. Without this second half the page stays shut.",
            "Open {address} in Safari, then *Share*, *Add to Home Screen*.",
            "Open the new icon and pair there, not in Safari: the two keep apart what they hold.",
        ),
    ),
    Way(
        "windows",
        "Windows",
        ("Windows",),
        (
            "Press **Get the certificate** above and open the file.",
            "Choose *Install Certificate*, *Current User*, *Next*.",
            "Choose *Place all certificates in the following store*, *Browse*, "
            "**Trusted Root Certification Authorities**, *OK*, *Next*, *Finish*.",
            "Answer *Yes* to the question. Close the browser, then open {address}.",
        ),
    ),
    Way(
        "macos",
        "macOS",
        ("Macintosh", "Mac OS X"),
        (
            "Press **Get the certificate** above and open the file; *Keychain Access* opens.",
            "Add it to the keychain *login*, find it there, and double-click it.",
            "Open *Trust* and set *When using this certificate* to **Always Trust**.",
            "Close the window, give your password, then open {address}.",
        ),
    ),
    Way(
        "linux",
        "Linux",
        ("Linux", "X11", "CrOS"),
        (
            "Press **Get the certificate** above.",
            "Chromium: *Settings*, *Privacy and security*, *Security*, *Manage certificates*, "
            "*Authorities*, *Import*, choose **ca.crt**, tick *websites*.",
            "Firefox: *Settings*, *Privacy & Security*, *Certificates*, *View Certificates*, "
            "*Authorities*, *Import*, tick *websites*.",
            "Open {address}. If the name is not found, install *libnss-mdns* once.",
        ),
    ),
)


def ways_for(browser: str) -> list[Way]:
    """All ways, the one for this browser first."""
    own = [way for way in WAYS if any(sign in browser for sign in way.signs)][:1]
    return own + [way for way in WAYS if way not in own]

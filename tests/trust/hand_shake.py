"""A hand-shake in memory, judged by OpenSSL: does a client who trusts the authority go on?"""

import ssl
from pathlib import Path


def shake(server: ssl.SSLContext, authority: Path | None, name: str) -> str:
    """Shake hands under a name; gives the TLS version, or raises what the client refuses with."""
    client = ssl.SSLContext(ssl.PROTOCOL_TLS_CLIENT)
    if authority is not None:
        client.load_verify_locations(str(authority))
    to_server, to_client = ssl.MemoryBIO(), ssl.MemoryBIO()
    near = client.wrap_bio(to_client, to_server, server_hostname=name)
    far = server.wrap_bio(to_server, to_client, server_side=True)
    is_done = {near: False, far: False}
    for _ in range(10):
        for side in (near, far):
            if not is_done[side]:
                try:
                    side.do_handshake()
                    is_done[side] = True
                except ssl.SSLWantReadError:
                    continue
        if all(is_done.values()):
            return near.version() or ""
    raise AssertionError("neither done nor refused")

"""The first tables."""

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Bring the tables on."""
    op.create_table(
        "about",
        sa.Column("workshop", sa.Text(), nullable=False),
        sa.Column("about", sa.Text(), autoincrement=False, nullable=False),
        sa.Column("seq", sa.BigInteger(), autoincrement=False, nullable=False),
        sa.Column("heading", sa.Text(), nullable=True),
        sa.Column("entry", sa.Text(), nullable=True),
        sa.PrimaryKeyConstraint("workshop", "about", "seq"),
    )
    op.create_table(
        "device",
        sa.Column("workshop", sa.Text(), nullable=False),
        sa.Column("id", sa.Text(), autoincrement=False, nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("key_hash", sa.Text(), nullable=True),
        sa.Column("paired", sa.Text(), nullable=False),
        sa.Column("revoked", sa.Text(), nullable=True),
        sa.Column("last_contact", sa.Text(), nullable=True),
        sa.Column("own", sa.Boolean(), nullable=False),
        sa.PrimaryKeyConstraint("workshop", "id"),
    )
    with op.batch_alter_table("device", schema=None) as batch_op:
        batch_op.create_index("device_by_id", ["id"], unique=True)
        batch_op.create_index("device_by_key", ["key_hash"], unique=True)

    op.create_table(
        "entry",
        sa.Column("workshop", sa.Text(), nullable=False),
        sa.Column("seq", sa.BigInteger(), autoincrement=False, nullable=False),
        sa.Column("id", sa.Text(), nullable=False),
        sa.Column("order", sa.Text(), nullable=True),
        sa.Column("carrier", sa.Text(), nullable=True),
        sa.Column("text", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("workshop", "seq"),
        sa.UniqueConstraint("workshop", "id", name="entry_by_id"),
    )
    op.create_table(
        "holder",
        sa.Column("workshop", sa.Text(), nullable=False),
        sa.Column("id", sa.Text(), autoincrement=False, nullable=False),
        sa.Column("name", sa.Text(), nullable=True),
        sa.Column("form", sa.Text(), nullable=True),
        sa.Column("holder", sa.Text(), nullable=True),
        sa.Column("hidden", sa.Boolean(), nullable=False),
        sa.PrimaryKeyConstraint("workshop", "id"),
    )
    op.create_table(
        "inspection",
        sa.Column("workshop", sa.Text(), nullable=False),
        sa.Column("id", sa.Text(), autoincrement=False, nullable=False),
        sa.Column("part", sa.Text(), nullable=False),
        sa.Column("verdict", sa.Text(), nullable=True),
        sa.Column("reason", sa.Text(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.Column("made", sa.Text(), nullable=True),
        sa.Column("by", sa.Text(), nullable=True),
        sa.Column("device", sa.Text(), nullable=True),
        sa.Column("struck", sa.Boolean(), nullable=False),
        sa.PrimaryKeyConstraint("workshop", "id"),
    )
    with op.batch_alter_table("inspection", schema=None) as batch_op:
        batch_op.create_index("inspection_by_part", ["workshop", "part"], unique=False)

    op.create_table(
        "joint",
        sa.Column("workshop", sa.Text(), nullable=False),
        sa.Column("id", sa.Text(), autoincrement=False, nullable=False),
        sa.Column("name", sa.Text(), nullable=True),
        sa.Column("build", sa.Text(), nullable=True),
        sa.Column("lubricant", sa.Text(), nullable=True),
        sa.Column("source", sa.Text(), nullable=True),
        sa.Column("fasteners", sa.Integer(), nullable=False),
        sa.Column("hidden", sa.Boolean(), nullable=False),
        sa.PrimaryKeyConstraint("workshop", "id"),
    )
    op.create_table(
        "label",
        sa.Column("workshop", sa.Text(), nullable=False),
        sa.Column("code", sa.Text(), autoincrement=False, nullable=False),
        sa.Column("marks", sa.Text(), autoincrement=False, nullable=False),
        sa.Column("state", sa.Text(), nullable=True),
        sa.PrimaryKeyConstraint("workshop", "code", "marks"),
    )
    op.create_table(
        "link",
        sa.Column("workshop", sa.Text(), nullable=False),
        sa.Column("origin", sa.Text(), autoincrement=False, nullable=False),
        sa.Column("role", sa.Text(), autoincrement=False, nullable=False),
        sa.Column("target", sa.Text(), autoincrement=False, nullable=False),
        sa.PrimaryKeyConstraint("workshop", "origin", "role", "target"),
    )
    with op.batch_alter_table("link", schema=None) as batch_op:
        batch_op.create_index("link_by_target", ["workshop", "target", "role"], unique=False)

    op.create_table(
        "numbered",
        sa.Column("workshop", sa.Text(), nullable=False),
        sa.Column("device", sa.Text(), autoincrement=False, nullable=False),
        sa.Column("highest", sa.BigInteger(), server_default="0", nullable=False),
        sa.Column("runs", sa.Text(), nullable=False),
        sa.Column("doubles", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("workshop", "device"),
    )
    op.create_table(
        "pairing",
        sa.Column("workshop", sa.Text(), nullable=False),
        sa.Column("id", sa.Text(), autoincrement=False, nullable=False),
        sa.Column("salt", sa.Text(), nullable=True),
        sa.Column("hash", sa.Text(), nullable=True),
        sa.Column("expires", sa.Text(), nullable=True),
        sa.PrimaryKeyConstraint("workshop", "id"),
    )
    op.create_table(
        "part",
        sa.Column("workshop", sa.Text(), nullable=False),
        sa.Column("id", sa.Text(), autoincrement=False, nullable=False),
        sa.Column("name", sa.Text(), nullable=True),
        sa.Column("kind", sa.Text(), nullable=True),
        sa.Column("quantity", sa.BigInteger(), nullable=True),
        sa.Column("donor", sa.Text(), nullable=True),
        sa.Column("build", sa.Text(), nullable=True),
        sa.Column("holder", sa.Text(), nullable=True),
        sa.Column("verdict", sa.Text(), nullable=True),
        sa.Column("hidden", sa.Boolean(), nullable=False),
        sa.PrimaryKeyConstraint("workshop", "id"),
    )
    op.create_table(
        "photo",
        sa.Column("workshop", sa.Text(), nullable=False),
        sa.Column("sha", sa.Text(), autoincrement=False, nullable=False),
        sa.Column("mime", sa.Text(), nullable=False),
        sa.Column("size", sa.BigInteger(), server_default="0", nullable=False),
        sa.Column("arrived", sa.Text(), nullable=True),
        sa.PrimaryKeyConstraint("workshop", "sha"),
    )
    op.create_table(
        "printed",
        sa.Column("workshop", sa.Text(), nullable=False),
        sa.Column("code", sa.Text(), autoincrement=False, nullable=False),
        sa.Column("sheet", sa.Text(), autoincrement=False, nullable=False),
        sa.PrimaryKeyConstraint("workshop", "code", "sheet"),
    )
    op.create_table(
        "pull",
        sa.Column("workshop", sa.Text(), nullable=False),
        sa.Column("id", sa.Text(), autoincrement=False, nullable=False),
        sa.Column("joint", sa.Text(), nullable=False),
        sa.Column("run", sa.Text(), nullable=True),
        sa.Column("fastener", sa.Text(), nullable=True),
        sa.Column("pass", sa.Text(), nullable=True),
        sa.Column("wrench", sa.Text(), nullable=True),
        sa.Column("target", sa.Text(), nullable=True),
        sa.Column("reading", sa.Text(), nullable=True),
        sa.Column("unit", sa.Text(), nullable=True),
        sa.Column("made", sa.Text(), nullable=True),
        sa.Column("by", sa.Text(), nullable=True),
        sa.Column("device", sa.Text(), nullable=True),
        sa.Column("struck", sa.Boolean(), nullable=False),
        sa.PrimaryKeyConstraint("workshop", "id"),
    )
    with op.batch_alter_table("pull", schema=None) as batch_op:
        batch_op.create_index("pull_by_joint", ["workshop", "joint"], unique=False)

    op.create_table(
        "setting",
        sa.Column("workshop", sa.Text(), nullable=False),
        sa.Column("name", sa.Text(), autoincrement=False, nullable=False),
        sa.Column("value", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("workshop", "name"),
    )
    op.create_table(
        "subject",
        sa.Column("workshop", sa.Text(), nullable=False),
        sa.Column("id", sa.Text(), autoincrement=False, nullable=False),
        sa.Column("heading", sa.Text(), nullable=True),
        sa.Column("name", sa.Text(), nullable=True),
        sa.Column("hidden", sa.Boolean(), nullable=False),
        sa.Column("state", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("workshop", "id"),
    )
    with op.batch_alter_table("subject", schema=None) as batch_op:
        batch_op.create_index("subject_by_heading", ["workshop", "heading"], unique=False)

    op.create_table(
        "workshop",
        sa.Column("id", sa.Text(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("head", sa.BigInteger(), server_default="0", nullable=False),
        sa.Column("count", sa.BigInteger(), server_default="0", nullable=False),
        sa.Column("digest", sa.Text(), nullable=False),
        sa.Column("latest", sa.Text(), nullable=True),
        sa.Column("projected", sa.BigInteger(), server_default="0", nullable=False),
        sa.Column("made", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("id"),
    )


def downgrade() -> None:
    """Bring the tables back."""
    op.drop_table("workshop")
    with op.batch_alter_table("subject", schema=None) as batch_op:
        batch_op.drop_index("subject_by_heading")

    op.drop_table("subject")
    op.drop_table("setting")
    with op.batch_alter_table("pull", schema=None) as batch_op:
        batch_op.drop_index("pull_by_joint")

    op.drop_table("pull")
    op.drop_table("printed")
    op.drop_table("photo")
    op.drop_table("part")
    op.drop_table("pairing")
    op.drop_table("numbered")
    with op.batch_alter_table("link", schema=None) as batch_op:
        batch_op.drop_index("link_by_target")

    op.drop_table("link")
    op.drop_table("label")
    op.drop_table("joint")
    with op.batch_alter_table("inspection", schema=None) as batch_op:
        batch_op.drop_index("inspection_by_part")

    op.drop_table("inspection")
    op.drop_table("holder")
    op.drop_table("entry")
    with op.batch_alter_table("device", schema=None) as batch_op:
        batch_op.drop_index("device_by_key")
        batch_op.drop_index("device_by_id")

    op.drop_table("device")
    op.drop_table("about")

"""One word per thing: words we do not use name no module, class, JSON key or sentence."""

import ast
import json
import re
import subprocess
from pathlib import Path

import pytest
from tools import node
from witnessmark.api import Config, create_app

ROOT = Path(__file__).resolve().parent.parent
PYTHON = sorted((ROOT / "server").rglob("*.py"))
SCRIPTS = sorted(p for p in (ROOT / "pwa").rglob("*.js") if "vendor" not in p.parts)

# what we say → what we do not say for it
NOT = {
    "workshop": "account tenant organisation organization",
    "build": "project job",
    "outline": "template",
    "kind": "category sku",
    "part": "item asset",
    "holder": "container location bucket",
    "label": "tag sticker barcode",
    "origin": "provenance",
    "place": "slot station",
    "verdict": "status grade",
    "reading": "datapoint",
    "programme": "procedure",
    "pass": "stage phase",
    "run": "session",
    "touch": "verify",
    "flagged": "warnings",
    "stale": "outdated",
    "pull": "tick checkmark",
    "wrench": "equipment",
    "set": "kit",
    "step": "task ticket",
    "hold point": "gate",
    "need": "requirement bom",
    "build sheet": "report",
    "proof": "qa",
    "entry": "event mutation",
    "stamp": "timestamp",
    "outbox": "queue",
    "view": "dashboard",
    "trust": "auth",
    "workings": "calculator",
    "spend": "budget",
    "strike out": "delete undo revert",
    "device": "client",
}
BANNED = {word for words in NOT.values() for word in words.split()}
# Words of other people's standards and libraries that we cannot rename.
ALLOWED_KEYS = {
    "status": "RFC 9457 problem documents name the HTTP number so",
}
# In sentences these have a plain meaning beside the one they are kept from.
ALLOWED_SENTENCES = {
    "warnings": "the signal word of ISO 3864",
}


ONE_LINE = """const { inOneLine } = await import(process.argv[1]);
console.log(JSON.stringify(JSON.parse(process.argv[2]).map(inOneLine)));"""


def test_a_number_and_its_unit_stay_in_one_line() -> None:
    texts = {
        "7.90 to 8.00 mm, ± 0.01 mm": "7.90 to 8.00~mm, ±~0.01~mm",
        "25 %, between 13 and 42 % with": "25~%, between 13 and 42~% with",
        "45 lbf·ft (61 N·m)": "45~lbf·ft (61~N·m)",
        "3 kgf/cm² and 3 kg": "3~kgf/cm² and 3~kg",
        "3 months, 4 barrels, 5 mmx": "3 months, 4 barrels, 5 mmx",
    }
    script = (ROOT / "pwa" / "app" / "one_line.js").as_uri()
    asked = [node(), "--input-type=module", "-e", ONE_LINE, script, json.dumps(list(texts))]
    done = subprocess.run(asked, capture_output=True, text=True, check=True)
    assert [text.replace("\u00a0", "~") for text in json.loads(done.stdout)] == [*texts.values()]


def split(name: str) -> set[str]:
    """The words of snake_case, camelCase, kebab-case and sentences, in lower case."""
    spaced = re.sub(r"([a-z0-9])([A-Z])", r"\1 \2", name)
    return {word.lower() for word in re.split(r"[^A-Za-z]+", spaced) if word}


def said(text: object) -> set[str]:
    return split(re.sub(r"\{\w+\}", "", json.dumps(text)))


def test_no_module_has_a_word_we_do_not_use() -> None:
    wrong = {p.relative_to(ROOT).as_posix() for p in PYTHON + SCRIPTS if split(p.stem) & BANNED}
    assert not wrong


def test_no_class_has_a_word_we_do_not_use() -> None:
    wrong = [
        f"{path.name}: {item.name}"
        for path in PYTHON
        for item in ast.walk(ast.parse(path.read_text("utf-8")))
        if isinstance(item, ast.ClassDef) and split(item.name) & BANNED
    ]
    assert not wrong


def test_no_sentence_on_the_screen_has_a_word_we_do_not_use() -> None:
    script = (
        "const {pathToFileURL} = await import('node:url');"
        "const {readdirSync} = await import('node:fs');"
        "const all = {};"
        "globalThis.navigator ??= { languages: ['en'] };"
        "for (const name of readdirSync(process.argv[1])) {"
        " if (name === 'index.js') continue;"
        " const file = pathToFileURL(process.argv[1] + '/' + name);"
        " Object.assign(all, (await import(file)).texts ?? {});"
        "}"
        "console.log(JSON.stringify(all));"
    )
    done = subprocess.run(
        [node(), "--input-type=module", "-e", script, str(ROOT / "pwa/app/texts")],
        capture_output=True, text=True, check=True,
    )  # fmt: skip
    texts = json.loads(done.stdout)
    assert len(texts) > 100
    blame = {"oops", "sorry", "invalid", "failed"}
    wrong = {
        key: text
        for key, text in texts.items()
        if (split(re.sub(r"\{\w+\}", "", json.dumps(text))) & (BANNED | blame))
        - set(ALLOWED_SENTENCES)
    }
    assert not wrong


@pytest.fixture
def openapi(tmp_path: Path) -> dict[str, object]:
    app = create_app(Config(data=tmp_path, database=None, demo=False, address="https://a.local:1"))
    answer = app.test_client().get("/api/v1/openapi.json").get_json()
    assert isinstance(answer, dict)
    return answer


def keys(node_: object) -> set[str]:
    if isinstance(node_, dict):
        named = node_.get("properties")
        own = set(named) if isinstance(named, dict) else set()
        return own.union(*(keys(value) for value in node_.values()))
    return set().union(*(keys(value) for value in node_)) if isinstance(node_, list) else set()


def test_no_key_on_the_wire_has_a_word_we_do_not_use(openapi: dict[str, object]) -> None:
    named = keys(openapi)
    assert len(named) > 20
    assert not {key for key in named if split(key) & BANNED} - set(ALLOWED_KEYS)


SAID = """
globalThis.navigator ??= { languages: ['en'] };
const { t } = await import(process.argv[1] + '/pwa/app/texts/index.js');
const { inWords } = await import(process.argv[1] + '/pwa/app/words.js');
const bolts = (n) => t('noun.count', { n, noun: 'head bolt', plural: 'head bolts' });
console.log(JSON.stringify([
  bolts(1), bolts(14), t('run.done', { n: 1 }), t('run.done', { n: 6 }),
  t('accept.says', { name: 'head bolt 9' }), t('find.open', { name: 'head bolts' }),
  inWords(['bore']), inWords(['bore', 'shaft', 'gap']),
]));
"""


def test_one_is_one_a_name_begins_large_and_a_list_ends_with_and() -> None:
    told = subprocess.run(
        [node(), "--input-type=module", "-e", SAID, str(ROOT)],
        check=True,
        capture_output=True,
        text=True,
    )
    assert json.loads(told.stdout) == [
        "1 head bolt", "14 head bolts", "Done.", "All 6 done.",
        "Head bolt 9 stays flagged. The pass can be whole.", "Open head bolts",
        "bore", "bore, shaft and gap",
    ]  # fmt: skip

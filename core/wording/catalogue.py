"""Reading a gettext catalogue as it stands: message ids and their texts, and nothing else."""

import json


def read_catalogue(text: str) -> dict[str, str]:
    r"""The texts by message id; the header, which has no id, is left out.

    Read are msgid and msgstr with texts over one or several lines; comments are passed over.
    ValueError at a line that is neither.

    >>> read_catalogue('msgid "role.stud"\nmsgstr "st"\n"ud"')
    {'role.stud': 'stud'}
    """
    found: dict[str, str] = {}
    name, part = "", ""
    for line in text.splitlines():
        word, quote, rest = line.partition('"')
        keyword = word.strip()
        if not quote or keyword.startswith("#"):
            if keyword and not keyword.startswith("#"):
                raise ValueError(f"a catalogue has msgid and msgstr, not {line!r}")
            continue
        # The escapes of gettext that we use are those of JSON too.
        said = json.loads(quote + rest)
        if keyword == "msgid":
            name, part = said, keyword
        elif keyword == "msgstr":
            found[name], part = said, keyword
        elif keyword:
            raise ValueError(f"a catalogue has msgid and msgstr, not {line!r}")
        elif part == "msgid":
            name += said
        else:
            found[name] += said
    return {key: value for key, value in found.items() if key}

"""verify: compare a folder with what was published there."""

from __future__ import annotations

from argparse import ArgumentParser, Namespace

from build_tools.commands.shared.exit_codes import DONE, STOPPED
from build_tools.commands.shared.folders import existing_readers_folder, take_readers_folder
from build_tools.publishing.edition_folders import editions_in
from build_tools.publishing.trouble import CannotPublishError
from build_tools.publishing.verify import verify
from build_tools.views.words.plain_words import how_many


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    take_readers_folder(parser)


def run(args: Namespace) -> int:
    """Read every file of every edition again; give 1 where one is not as it was published."""
    target = existing_readers_folder(args.folder)
    try:
        wrong = verify(target)
    except CannotPublishError as stopped:
        wrong = [str(stopped)]
    for line in wrong:
        print(line)
    if wrong:
        print("`mend` makes it whole from what is here; `publish` does so too, with today's pages")
        return STOPPED
    print(f"{how_many(len(editions_in(target)), 'edition')}, every file as it was published")
    return DONE

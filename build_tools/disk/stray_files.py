"""Files that nobody wrote: what systems, shares and editors leave beside the ones that count.

Known by their names alone, in any case; common practice, no one source. A copy that a share made
of a conflict is none of these, since somebody's words are in it.
"""

from __future__ import annotations

_NAMES = {
    # Windows
    "thumbs.db",
    "ehthumbs.db",
    "ehthumbs_vista.db",
    "desktop.ini",
    "$recycle.bin",
    "system volume information",
    # macOS
    ".ds_store",
    ".localized",
    ".appledouble",
    ".fseventsd",
    ".spotlight-v100",
    ".temporaryitems",
    ".trashes",
    "__macosx",
    "icon\r",
    "network trash folder",
    "temporary items",
    # Linux, and boxes that hold a share
    ".directory",
    ".hidden",
    "lost+found",
    "@eadir",
    "#recycle",
    # clouds
    ".dropbox",
    ".dropbox.attr",
    ".dropbox.cache",
    # an editor tries with it whether it can write
    "4913",
}
_STARTS = (
    "._",  # macOS on disks of others: what its own disks keep beside a file
    ".~lock.",  # office programs: who has the file open
    "~$",
    "~wrl",
    ".nfs",  # a file deleted while somebody has it open
    ".smbdelete",
    ".fuse_hidden",
    ".trash-",
    ".goutputstream-",
    ".sync_",
    ".syncthing.",
    "~syncthing~",
)
_ENDS = (
    "~",  # editors: the text before, the text not yet saved
    ".bak",
    ".swp",
    ".swo",
    ".swn",
    ".kate-swp",
    ".orig",  # merging
    ".rej",
    ".tmp",  # whatever is written or fetched at this moment
    ".temp",
    ".part",
    ".partial",
    ".crdownload",
)


def is_stray(name: str) -> bool:
    """Whether a file or folder of this name was left behind by a program."""
    low = name.casefold()
    saved_by_itself = len(low) > 2 and low.startswith("#") and low.endswith("#")
    return low in _NAMES or low.startswith(_STARTS) or low.endswith(_ENDS) or saved_by_itself


def is_beside(path: str) -> bool:
    """Whether a path, with `/`, leads to a stray file or into a stray folder."""
    return any(is_stray(part) for part in path.split("/"))

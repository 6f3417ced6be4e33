"""Packs whose maker wanted them refused, and that are taken in without harm: why."""

from __future__ import annotations

from enum import Enum
from itertools import chain, repeat

from build_tools.sentences.word_lists import word_list


class Reason(Enum):
    """What becomes of the harm."""

    LEFT_OUT = "what it is about comes beside the unit: it is left out, which is said"
    WRITTEN_ANEW = "the picture is written anew of what is known, so nothing of it is left"
    ON_ONE_LINE = "a line break in a name is shown as a space"
    DRAWN_SOON = "a browser draws it in about a second"
    MEANS_NOTHING = "what it is about is never asked, or means just what it says"


_LEFT_OUT = word_list(
    "about-adapted-from-claims about-adapted-from-loop about-adapted-from-markup "
    "about-adapted-from-text about-backslashes about-depth-900 about-issued-differs "
    "about-issued-missing about-issued-null about-issued-number about-issued-object "
    "about-key-codes about-key-proto about-licence-differs about-licence-missing "
    "about-licence-null about-licence-number about-licence-object about-nul-in-text "
    "about-publisher-differs about-publisher-empty about-publisher-list about-publisher-missing "
    "about-publisher-null about-publisher-number about-publisher-object about-publisher-true "
    "about-surrogate about-surrogate-key about-title-differs about-title-missing about-title-null "
    "about-title-number about-title-object ask-audio ask-html-manifest ask-img-data-gps "
    "ask-img-data-png-bomb ask-img-data-svg-bomb ask-img-data-svg-request ask-img-dynsrc "
    "ask-img-lazy-report ask-img-srcset ask-img-web ask-meta-accept-ch ask-meta-origin-trial "
    "ask-meta-referrer ask-meta-theme-manifest ask-meta-x-ua ask-picture ask-refresh-entity "
    "ask-set-cookie ask-style-attr ask-style-attr-leak ask-style-second ask-svg-feimage "
    "ask-svg-fill-web ask-svg-image ask-svg-style ask-svg-use-web ask-table-background ask-track "
    "ask-video coded-page-charset-second coded-page-cut coded-page-doctype-gone "
    "coded-page-doctype-xhtml coded-page-empty coded-page-iso-2022-jp-no-escape "
    "coded-page-shift-jis coded-page-svg-inline-hides coded-page-text-only coded-page-utf7 "
    "coded-page-windows-1252 coded-page-x-user-defined coded-page-xml-encoding contenteditable "
    "credits-bidi credits-empty credits-extra-lines credits-html credits-lines-of-spaces "
    "credits-missing-item credits-other-author credits-other-licence credits-other-url "
    "dialog-open-covers extra-lesson-01-html jsonld-context-import jsonld-context-web "
    "jsonld-depth jsonld-digits-5000 jsonld-duplicates jsonld-js-url jsonld-nan jsonld-not-json "
    "jsonld-publisher-other jsonld-surrogate licence-appended licence-empty licence-homoglyphs "
    "licence-one-word-changed licence-other-text marquee-blink policy-connect "
    "policy-form-action-star policy-gone policy-report policy-wide-img run-a-ping "
    "run-a-target-opener run-a-web run-attr-unquoted-gt run-dialog-command run-fencedframe "
    "run-input-file run-input-image run-login-lookalike run-math-mtext run-noembed "
    "run-noscript-differs run-script-long-s run-style-in-attr run-svg-animate "
    "run-svg-p-breaks-out run-svg-use-data run-textarea run-xmp slow-page-amp slow-page-amp-hash "
    "slow-page-amp-long slow-page-amp-name slow-page-amp-x slow-page-attr-newlines "
    "slow-page-b-deep-aaa slow-page-cdata slow-page-comment slow-page-comment-bang "
    "slow-page-comment-dash slow-page-declaration slow-page-end slow-page-end-a slow-page-end-br "
    "slow-page-formatting-adoption slow-page-marked slow-page-marked-if slow-page-pi "
    "slow-page-slashes-in-tag slow-page-spaces-in-tag slow-page-style-open slow-page-svg-deep "
    "slow-page-table-deep slow-page-textarea-open slow-page-title-open "
)
_WRITTEN_ANEW = word_list(
    "active-ev-listener active-on-namespaced active-pi-html active-script-in-metadata "
    "freeze-animate-css-flash freeze-animation-css freeze-attributes-50000 freeze-style-calc "
    "freeze-style-vars-doubling freeze-use-encoded-id inner-fragment jpeg-exif-after-eoi "
    "jpeg-polyglot-zip jpeg-two-pictures png-acropalypse png-appended-10mb "
    "png-appended-other-picture png-appended-zip png-chunk-name-odd png-idat-split-gap "
    "png-text-after-iend request-cursor request-foreign-attr request-mask-image request-pi-php "
    "request-style-element-fn request-style-image-fn request-style-namespace request-style-src "
    "request-stylesheet-pi request-stylesheet-pi-xsl request-xinclude webp-after-riff "
    "webp-appended-zip "
)
_DRAWN_SOON = word_list(
    "freeze-dash-style freeze-filter-blur freeze-path-dots freeze-path-overlap "
    "freeze-pattern-tiny freeze-transform-long "
)
_ON_ONE_LINE = word_list(
    "publisher-odd-carriage-return publisher-odd-crlf-header publisher-odd-newline-forged "
    "title-odd-carriage-return title-odd-crlf-header title-odd-newline-forged "
)
_MEANS_NOTHING = word_list(
    "coded-page-style-end-in-comment "
    "about-bom about-duplicate-escaped about-duplicate-publisher about-made-with-huge "
    "about-made-with-missing about-made-with-null about-made-with-number about-schema-format-huge "
    "about-schema-missing about-schema-null about-schema-number about-schema-sha-number "
    "about-schema-url coded-page-style-changed credits-missing jpeg-scan-empty licence-missing "
    "pages-missing-one slug-differs-from-folder tagmanifest-md5-only value-format-float "
    "value-title-true "
)
HARMLESS: dict[str, Reason] = dict(
    chain(
        zip(_LEFT_OUT, repeat(Reason.LEFT_OUT), strict=False),
        zip(_WRITTEN_ANEW, repeat(Reason.WRITTEN_ANEW), strict=False),
        zip(_DRAWN_SOON, repeat(Reason.DRAWN_SOON), strict=False),
        zip(_ON_ONE_LINE, repeat(Reason.ON_ONE_LINE), strict=False),
        zip(_MEANS_NOTHING, repeat(Reason.MEANS_NOTHING), strict=False),
    )
)

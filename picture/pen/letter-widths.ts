import type { Voice } from '../lettering.ts';

/**
 * Advance widths in thousandths of the size, read from the font files of @fontsource/encode-sans 5.3.0 and
 * @fontsource/newsreader 5.3.0 (`latin`, advanceWidth × 1000 / unitsPerEm): the printable ASCII in order, then a few
 * more. A letter with an accent is as wide as its letter; others are taken as 0.6 of the size.
 */
const WIDTHS: Readonly<
  Record<string, { readonly ascii: string; readonly more: Readonly<Record<string, number>> }>
> = {
  figures400: {
    ascii:
      '245 251 378 579 532 923 748 210 330 330 459 538 231 420 231 308 625 366 493 506 591 512 576 470 625 576 231 231 538 538 538 452 958 675 630 576 700 583 563 674 723 251 251 619 536 880 735 720 617 720 654 532 588 709 657 1058 639 588 577 330 310 330 579 561 526 515 565 438 565 515 359 565 569 232 232 519 231 848 569 556 565 565 362 451 375 564 529 847 505 529 460 350 244 350 538',
    more: {
      '±': 538,
      '×': 500,
      '−': 538,
      '–': 450,
      '—': 900,
      '…': 672,
      '’': 231,
      '“': 409,
      '”': 409,
      '·': 231,
      '°': 490,
      µ: 564,
    },
  },
  figures600: {
    ascii:
      '249 282 428 610 561 1004 783 228 348 348 488 546 262 442 262 364 654 398 522 531 620 536 608 497 654 608 262 262 546 546 546 480 1015 710 654 604 733 612 591 699 749 280 280 649 561 918 759 760 644 760 677 561 624 734 695 1111 671 624 605 348 365 348 610 590 555 543 597 466 597 541 386 597 596 262 262 565 262 883 596 586 597 597 390 476 405 592 564 885 542 564 490 368 265 368 546',
    more: {
      '±': 546,
      '×': 513,
      '−': 546,
      '–': 450,
      '—': 900,
      '…': 764,
      '’': 262,
      '“': 483,
      '”': 483,
      '·': 262,
      '°': 487,
      µ: 592,
    },
  },
  words400: {
    ascii:
      '229 270 354 567 567 781 717 199 285 285 435 512 239 354 230 401 567 567 567 567 567 567 567 567 567 567 253 269 512 512 512 441 891 711 644 705 763 640 592 751 800 339 446 730 603 979 771 777 609 777 645 555 670 768 692 967 719 684 634 329 401 330 512 410 500 460 546 437 556 462 345 496 561 280 247 541 269 832 573 526 564 545 394 384 342 537 527 743 507 524 431 322 252 322 512',
    more: {
      '±': 512,
      '×': 512,
      '−': 512,
      '–': 521,
      '—': 686,
      '…': 641,
      '’': 237,
      '“': 411,
      '”': 412,
      '·': 247,
      '°': 385,
      µ: 564,
    },
  },
  words400italic: {
    ascii:
      '233 269 345 567 567 807 687 191 277 277 432 517 232 344 225 406 567 567 567 567 567 567 567 650 567 567 256 266 517 517 517 447 909 677 625 682 744 624 575 733 772 333 424 696 570 942 742 753 590 752 632 541 634 737 662 919 680 652 610 318 376 320 517 391 500 494 469 378 498 397 308 420 498 285 256 476 261 767 538 451 509 464 396 348 319 517 470 666 487 477 421 316 250 315 517',
    more: {
      '±': 517,
      '×': 517,
      '−': 517,
      '–': 499,
      '—': 656,
      '…': 633,
      '’': 236,
      '“': 408,
      '”': 409,
      '·': 242,
      '°': 389,
      µ: 555,
    },
  },
  words500: {
    ascii:
      '225 277 372 588 588 808 729 204 291 291 434 512 246 358 238 403 588 588 588 588 588 588 588 588 588 588 261 273 512 512 512 461 893 732 665 710 774 654 606 760 817 354 460 750 619 1000 776 783 629 783 671 570 684 775 709 996 738 702 643 329 403 329 512 411 500 474 557 448 567 471 361 507 574 291 261 559 280 849 586 534 574 555 411 397 360 553 538 762 519 538 445 323 250 323 512',
    more: {
      '±': 512,
      '×': 512,
      '−': 512,
      '–': 515,
      '—': 680,
      '…': 671,
      '’': 243,
      '“': 431,
      '”': 432,
      '·': 253,
      '°': 382,
      µ: 579,
    },
  },
};

const UNKNOWN_WIDTH = 600;

const widthsByFont = new Map<string, readonly number[]>();

/** Width of the words at size 1, without kerning. `stretch` is in per cent. */
export const letterWidth = (
  words: string,
  font: { readonly voice: Voice; readonly weight: number; readonly italic?: true; readonly stretch?: number },
): number => {
  const name = fontOfWidths(font);
  const table = WIDTHS[name];
  if (!table) throw new Error(`no letter widths for ${name}`);
  let ascii = widthsByFont.get(name);
  if (!ascii) {
    ascii = table.ascii.split(' ').map(Number);
    widthsByFont.set(name, ascii);
  }
  let sum = 0;
  for (const letter of words) {
    const plain = letter === '\u00a0' ? 32 : letter.normalize('NFD').charCodeAt(0);
    sum += table.more[letter] ?? ascii[plain - 32] ?? UNKNOWN_WIDTH;
  }
  return (sum / 1000) * ((font.stretch ?? 100) / 100);
};

const fontOfWidths = (font: {
  readonly voice: Voice;
  readonly weight: number;
  readonly italic?: true;
}): string => {
  if (font.voice === 'figures') return font.weight >= 550 ? 'figures600' : 'figures400';
  if (font.italic) return 'words400italic';
  return font.weight >= 450 ? 'words500' : 'words400';
};

package stackside.generate;

import java.util.List;
import java.util.Locale;

/**
 * The words that tell the parts of a generated unit apart: shore birds and others, none a maker.
 */
final class Birds {
  private static final List<String> WORDS =
      List.of(
          ("Avocet Bittern Bunting Chough Coot Cuckoo Curlew Dabchick Dipper Dotterel"
                  + " Dunlin Dunnock Eider Fulmar Gadwall Gannet Garganey Godwit Goshawk Grebe Heron"
                  + " Hoopoe Jackdaw Knot Lapwing Linnet Magpie Mallard Martin Moorhen Nightjar"
                  + " Nuthatch Oriole Ouzel Petrel Pintail Pipit Plover Pochard Puffin Quail Redpoll"
                  + " Redshank Redstart Redwing Reedling Robin Rook Ruff Scaup Scoter Serin Shelduck"
                  + " Shoveler Siskin Skua Skylark Smew Snipe Sparrow Starling Stint Swallow Teal"
                  + " Tern Thrush Twite Wagtail Warbler Waxwing Wheatear Whimbrel Whinchat Wigeon"
                  + " Woodcock Woodlark Wren Wryneck Auk Brant Bustard Buzzard Crake Crow Dove"
                  + " Dovekie Egret Finch Gull Harrier Hawfinch Ibis Jay Kestrel Kite Lark Noddy"
                  + " Osprey Rail Raven Shag Shrike Stork Swift Diver")
              .split(" "));

  private Birds() {}

  static int most() {
    return WORDS.size();
  }

  /** The word of one part, as it stands in a name. */
  static String name(int part) {
    return WORDS.get(part);
  }

  /** The word of one part, as it stands in an id. */
  static String id(int part) {
    return name(part).toLowerCase(Locale.ROOT);
  }
}

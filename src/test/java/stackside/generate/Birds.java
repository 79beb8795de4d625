package stackside.generate;

import java.util.List;
import java.util.Locale;

/**
 * The words that tell the parts of a generated unit apart: shore birds and others, none a maker.
 */
final class Birds {
  private static final List<String> WORDS =
      List.of(
          ("Avocet Bittern Brambling Bunting Chiffchaff Chough Coot Cormorant Corncrake Crossbill"
                  + " Cuckoo Curlew Dabchick Dipper Dotterel Dunlin Dunnock Eider Fieldfare Firecrest"
                  + " Fulmar Gadwall Gannet Garganey Godwit Goldcrest Goldeneye Goosander Goshawk"
                  + " Grebe Greenfinch Greenshank Guillemot Heron Hoopoe Jackdaw Kittiwake Knot"
                  + " Lapwing Linnet Magpie Mallard Martin Merganser Moorhen Nightjar Nuthatch Oriole"
                  + " Ouzel Partridge Petrel Phalarope Pintail Pipit Plover Pochard Puffin Quail"
                  + " Razorbill Redpoll Redshank Redstart Redwing Reedling Robin Rook Ruff Sanderling"
                  + " Sandpiper Scaup Scoter Serin Shelduck Shoveler Siskin Skua Skylark Smew Snipe"
                  + " Sparrow Spoonbill Starling Stint Stonechat Swallow Teal Tern Thrush"
                  + " Treecreeper Turnstone Twite Wagtail Warbler Waxwing Wheatear Whimbrel Whinchat"
                  + " Whitethroat Wigeon Woodcock Woodlark Wren Wryneck")
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

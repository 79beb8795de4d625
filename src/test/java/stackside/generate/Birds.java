package stackside.generate;

import java.util.List;
import java.util.Locale;

/** Names of birds, which distinguish the parts of a generated unit. */
final class Birds {
  private static final List<String> WORDS =
      List.of(
          ("Avocet Bittern Bunting Chough Coot Cuckoo Curlew Dabchick Dipper Dotterel"
                  + " Dunlin Dunnock Eider Fulmar Gadwall Gannet Garganey Godwit Goshawk Grebe"
                  + " Accentor Hoopoe Jackdaw Knot Lapwing Linnet Magpie Mallard Bullfinch"
                  + " Moorhen Nightjar Nuthatch Oriole Ouzel Petrel Pintail Pipit Plover Pochard"
                  + " Puffin Quail Redpoll Redshank Redstart Redwing Reedling Chiffchaff Rook"
                  + " Ruff Scaup Scoter Serin Shelduck Shoveler Siskin Skua Skylark Smew Snipe"
                  + " Sparrow Corncrake Stint Crossbill Teal Tern Thrush Twite Wagtail Warbler"
                  + " Waxwing Wheatear Whimbrel Whinchat Wigeon Woodcock Woodlark Fieldfare"
                  + " Wryneck Auk Brant Bustard Buzzard Crake Firecrest Greenshank Dovekie Egret"
                  + " Guillemot Gull Harrier Hawfinch Ibis Kittiwake Nutcracker Phalarope"
                  + " Ptarmigan Noddy Razorbill Sanderling Spoonbill Stonechat Shrike Stork"
                  + " Turnstone Diver")
              .split(" "));

  private Birds() {}

  static int most() {
    return WORDS.size();
  }

  /** The word for one part, as used in a name. */
  static String name(int part) {
    return WORDS.get(part);
  }

  /** The word for one part, as used in an id. */
  static String id(int part) {
    return name(part).toLowerCase(Locale.ROOT);
  }
}

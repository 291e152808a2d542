#include "support/samples.h"

#include <stddef.h>

const struct sample samples[] = {
	/* Letters of Europe, composed and not. */
	{ u8"Rose bed", true },
	{ u8"Caf\u00E9 Ros\u00E9", true },
	{ u8"Cafe\u0301 Rose\u0301", true },
	{ u8"Se\u00F1ora Pi\u00F1\u00F3n", true },
	{ u8"Sen\u0303ora Pin\u0303o\u0301n", true },
	{ u8"Gro\u00DFe \u00C4cker", true },
	{ u8"Gro\u00DFe A\u0308cker", true },
	{ u8"\u0110\u01B0\u1EDDng v\u01B0\u1EDDn h\u1ED3ng", true },
	{ u8"\u0110u\u031Bo\u031B\u0300ng vu\u031Bo\u031B\u0300n ho\u0302\u0300ng", true },
	{ u8"R\u016F\u017Ee a \u0161e\u0159\u00EDk", true },
	{ u8"Ru\u030Az\u030Ce a s\u030Cer\u030Ci\u0301k", true },
	{ u8"\u00C5ngstr\u00F6m \u03A9hm", true },
	{ u8"fine \uFB01ne \uFB02ora", true },
	{ u8"\u1F4D\u03BB\u03B1 \u03C4\u1F70 \u1FE5\u03CC\u03B4\u03B1", true },
	{ u8"\u039F\u0314\u0301\u03BB\u03B1 \u03C4\u03B1\u0300 \u03C1\u0314\u03BF"
		u8"\u0301\u03B4\u03B1", true },
	{ u8"\u0419\u043E\u0440\u043A\u0441\u043A\u0438\u0439 \u0451\u043B\u043E"
		u8"\u0447\u043D\u044B\u0439", true },
	{ u8"\u0418\u0306\u043E\u0440\u043A\u0441\u043A\u0438\u0438\u0306 \u0435"
		u8"\u0308\u043B\u043E\u0447\u043D\u044B\u0438\u0306", true },
	{ u8"Q\u0307\u0323x Q\u0323\u0307", true },
	{ u8"Z\u0300\u0301\u0302\u0303\u0304\u0305\u0306a", true },
	{ u8"\u0301leading mark", true },
	{ u8"a\u0345\u0301", true },
	{ u8"x\u034Fy\u0301", true },
	{ u8"\u0118\u0105 \u01EB\u0301 \u1E69", true },
	{ u8"s\u0323\u0307 s\u0307\u0323", true },
	/* Scripts of Asia and Africa. */
	{ u8"\u0E2A\u0E27\u0E19\u0E14\u0E2D\u0E01\u0E44\u0E21\u0E49", true },
	{ u8"\u0E01\u0E38\u0E2B\u0E25\u0E32\u0E1A\u0E19\u0E49\u0E33", true },
	{ u8"\u0E17\u0E35\u0E48\u0E19\u0E35\u0E48", true },
	{ u8"\u0EAA\u0EA7\u0E99\u0E94\u0EAD\u0E81\u0EC4\u0EA1\u0EC9", true },
	{ u8"\u179F\u17BD\u1793\u1785\u17D2\u1794\u17B6\u179A", true },
	{ u8"\u1025\u101A\u103B\u102C\u1009\u103A", true },
	{ u8"\u0917\u0941\u0932\u093E\u092C \u0915\u0940 \u0915\u094D\u092F\u093E"
		u8"\u0930\u0940", true },
	{ u8"\u0915\u094D\u0937\u0924\u094D\u0930\u093F\u092F \u0939\u093F\u0928"
		u8"\u094D\u0926\u0940", true },
	{ u8"\u09A8\u09A4\u09C1\u09A8 \u09AC\u09BE\u0997\u09BE\u09A8", true },
	{ u8"\u0B95\u0BC1\u0BB1\u0BBF\u0B9E\u0BCD\u0B9A\u0BBF \u0BA4\u0BCB\u0B9F"
		u8"\u0BCD\u0B9F\u0BAE\u0BCD", true },
	{ u8"\u0C24\u0C4B\u0C1F \u0C2A\u0C41\u0C35\u0C4D\u0C35\u0C41\u0C32\u0C41", true },
	{ u8"\u0CA4\u0CCB\u0C9F \u0CB9\u0CC2\u0CB5\u0CC1", true },
	{ u8"\u0D2A\u0D42\u0D28\u0D4D\u0D24\u0D4B\u0D1F\u0D4D\u0D1F\u0D02", true },
	{ u8"\u0DC1\u0DCA\u200D\u0DBB\u0DD3 \u0DC0\u0DAD\u0DCA\u0DAD", true },
	{ u8"\u0A2C\u0A3E\u0A17\u0A3C \u0A2B\u0A41\u0A71\u0A32", true },
	{ u8"\u0F56\u0F7C\u0F51\u0F0B\u0F40\u0FB1\u0F72\u0F0B\u0F63\u0FA1\u0F74"
		u8"\u0F58\u0F0B\u0F62", true },
	{ u8"\u12E8\u12A0\u1275\u12AD\u120D\u1275 \u1235\u134D\u122B", true },
	{ u8"\u0915\u094D\u200D\u0937 \u0915\u094D\u200C\u0937", true },
	{ u8"\uA98F\uA9BA\uA9A7\uA9BA\uA9B4\uA9A4\uA9C0", true },
	/* East Asia, wide and halved. */
	{ u8"\u5EAD\u5712\u3068\u8594\u8587", true },
	{ u8"\u30D0\u30E9\u5712", true },
	{ u8"\u30CF\u3099\u30E9\u5712\u30AB\u3099\u30AD\u3099\u30AF\u3099", true },
	{ u8"\uFF8A\uFF9E\uFF97\u5712 \uFF8A\uFF9F", true },
	{ u8"\uFF26\uFF55\uFF4C\uFF4C\u3000\uFF57\uFF49\uFF44\uFF45", true },
	{ u8"\U00020BB7\u91CE\u5BB6\u306E\u5EAD", true },
	{ u8"\uC7A5\uBBF8 \uC815\uC6D0", true },
	{ u8"\u110C\u1161\u11BC\u1106\u1175 \u110C\u1165\u11BC\u110B\u116F\u11AB", true },
	{ u8"\u1112\u119E\u11AB\uAE00 \u115F\u1160", true },
	{ u8"\u1100\u1100\u1161\u11A8", true },
	{ u8"\u845B\U000E0100\u98FE", true },
	{ u8"\u8FBB\uFE00", true },
	{ u8"\u6F22\u5B57\u6F22\u5B57\u6F22\u5B57\u6F22\u5B57\u6F22\u5B57\u6F22"
		u8"\u5B57\u6F22\u5B57\u6F22\u5B57\u6F22\u5B57\u6F22"
		u8"\u5B57\u6F22\u5B57\u6F22\u5B57\u6F22\u5B57\u6F22\u5B57\u6F22\u5B57", true },
	{ u8"\u304B\u3099\u304D\u3099", true },
	{ u8"roses.. \U0001F339 lilies.. \u269C gate.. \U0001F6AA", true },
	/* Signs and emoji. */
	{ u8"\U0001F333\U0001F332\U0001F334", true },
	{ u8"\u2764\uFE0F and \u2764", true },
	{ u8"\u263A\uFE0E text", true },
	{ u8"\U0001F469\U0001F3FD gardener", true },
	{ u8"\U0001F469\u200D\U0001F33E farmer", true },
	{ u8"\U0001F468\u200D\U0001F469\u200D\U0001F467\u200D\U0001F466", true },
	{ u8"\U0001F3F3\uFE0F\u200D\U0001F308", true },
	{ u8"\U0001F1E9\U0001F1EA\U0001F1EB\U0001F1F7 flags", true },
	{ u8"\U0001F1E9 half", true },
	{ u8"1\uFE0F\u20E3 key", true },
	{ u8"\U0001F469\U0001F3FD\u200D\U0001F33E", true },
	{ u8"\U0001F9D1\U0001F3FB\u200D\U0001F91D\u200D\U0001F9D1\U0001F3FF", true },
	{ u8"\U0001FAE8 new", true },
	{ u8"\u0378 unassigned", true },
	{ u8"\u2192 \u00B2 \u00D7 \u00BD \u00B0 \u201Cquotes\u201D \u2014 \u2026", true },
	{ u8"a\u20DD circled", true },
	{ u8"\uFFFD", true },
	/* From right to left. */
	{ u8"\u05D2\u05DF \u05D5\u05E8\u05D3\u05D9\u05DD", true },
	{ u8"\u05D2\u05B7\u05BC\u05DF \u05D5\u05B0\u05E8\u05B8\u05D3\u05B4\u05D9\u05DD", true },
	{ u8"\u062D\u062F\u064A\u0642\u0629 \u0627\u0644\u0648\u0631\u062F", true },
	{ u8"\u062D\u064E\u062F\u0650\u064A\u0642\u064E\u0629\u064F \u0627\u0644"
		u8"\u0652\u0648\u064E\u0631\u0652\u062F\u0650", true },
	{ u8"\u0645\u06CC\u200C\u062E\u0648\u0627\u0647\u0645 \u06AF\u0644", true },
	{ u8"\u06AF\u0644\u0633\u062A\u0627\u0646\u0650 \u0633\u0639\u062F\u06CC", true },
	{ u8"mixed \u05E9\u05DC\u05D5\u05DD 123 \u0639\u0631\u0628\u064A end", true },
	{ u8"\u078B\u07A8\u0788\u07AC\u0780\u07A8", true },
	/* ASCII that has a meaning elsewhere. */
	{ u8"say \"hello\"", true },
	{ u8"back\\slash \\\" \\n", true },
	{ u8"  blanks around  ", true },
	{ u8"-- ; # % ${x} `y`", true },
	{ u8"a\u00A0b\u202Fc\u3000d", true },
	/* What no plot holds. */
	{ u8"zero\u200Bwidth", false },
	{ u8"\uFEFFmark", false },
	{ u8"over\u202Eride", false },
	{ u8"iso\u2066late\u2069", false },
	{ u8"\u061Cletter", false },
	{ u8"soft\u00ADhyphen", false },
	{ u8"word\u2060joiner", false },
	{ u8"\uE000 own", false },
	{ u8"line\u2028end", false },
	{ u8"\U0001F3F4\U000E0067\U000E0062\U000E007F", false },
	{ u8"next\302\205line", false },
	{ u8"none\uFFFE", false },
	{ NULL, false }
};

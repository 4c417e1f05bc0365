//! The story of one participant of the demo in a second language, sentence by sentence, as a family
//! would have written it; nobody has read it through yet.

use crate::model::telling::Second;

/// A sentence as the story says it, and the same in Arabic.
const ARABIC: [(&str, &str); 63] = [
    ("My Saturday", "يوم السبت"),
    ("My Saturday: Boat morning", "يوم السبت: صباح القارب"),
    (
        "Boat morning is on Saturday 12\u{a0}June.",
        "صباح القارب يوم السبت ١٢ يونيو.",
    ),
    (
        "It starts at 09:30 at Heron Landing, Reedwater Lagoon.",
        "يبدأ في الساعة ٩:٣٠ عند مرسى البحيرة.",
    ),
    ("Farid plans to be my helper.", "ينوي فريد أن يكون مساعدي."),
    ("Hello", "مرحبا"),
    (
        "I meet my group at the landing.",
        "ألتقي بمجموعتي عند المرسى.",
    ),
    (
        "Many people may talk at the same time.",
        "قد يتكلم كثير من الناس في وقت واحد.",
    ),
    (
        "I can wave, look or show a card.",
        "أستطيع أن ألوّح أو أنظر أو أُري بطاقة.",
    ),
    ("Circle", "الحلقة"),
    (
        "The group sits on mats and looks at the group board.",
        "تجلس المجموعة على البسط وتنظر إلى لوحة المجموعة.",
    ),
    ("People may sit close to me.", "قد يجلس الناس قريبًا مني."),
    (
        "I can take a mat with more space.",
        "أستطيع أن آخذ بساطًا فيه مكان أوسع.",
    ),
    ("Sunscreen", "واقي الشمس"),
    (
        "I put sunscreen on my face, arms and legs.",
        "أضع واقي الشمس على وجهي وذراعيّ وساقيّ.",
    ),
    (
        "Sunscreen may feel cold or sticky.",
        "قد يكون واقي الشمس باردًا أو لزجًا.",
    ),
    (
        "I can use the mirror or ask a helper.",
        "أستطيع أن أستعمل المرآة أو أسأل مساعدًا.",
    ),
    ("Song", "الأغنية"),
    ("The group sings one song.", "تغنّي المجموعة أغنية واحدة."),
    ("The singing may be loud.", "قد يكون الغناء عاليًا."),
    (
        "I can sing, listen or wear ear muffs.",
        "أستطيع أن أغنّي أو أستمع أو أضع سمّاعات الأذن.",
    ),
    ("Warm up", "الإحماء"),
    (
        "The group moves arms, legs and shoulders.",
        "تحرّك المجموعة الذراعين والساقين والكتفين.",
    ),
    ("My heart may beat faster.", "قد يدقّ قلبي أسرع."),
    ("I can move in my own way.", "أستطيع أن أتحرّك بطريقتي."),
    ("Dig", "الحفر"),
    (
        "I dig a small hole in the sand and fill it in.",
        "أحفر حفرة صغيرة في الرمل ثم أملؤها.",
    ),
    (
        "The sand may feel rough or wet.",
        "قد يكون الرمل خشنًا أو مبلّلًا.",
    ),
    (
        "I can wipe my hands at any time.",
        "أستطيع أن أمسح يديّ في أي وقت.",
    ),
    ("Life jacket", "سترة النجاة"),
    (
        "I wear a life jacket, and a helper looks at each buckle.",
        "ألبس سترة النجاة، وينظر مساعد إلى كل مشبك.",
    ),
    (
        "The life jacket may feel thick and tight.",
        "قد تكون السترة سميكة وضيّقة.",
    ),
    (
        "I can close a buckle or ask for help.",
        "أستطيع أن أغلق مشبكًا أو أطلب المساعدة.",
    ),
    ("Walking frame", "المشّاية"),
    ("I walk with my frame.", "أمشي بالمشّاية."),
    ("Walk to the water", "المشي إلى الماء"),
    (
        "I walk to the water with my helper.",
        "أمشي إلى الماء مع مساعدي.",
    ),
    (
        "The mat path over the sand may feel bumpy.",
        "قد يكون ممرّ البسط فوق الرمل غير مستوٍ.",
    ),
    (
        "I can go slowly or show Stop.",
        "أستطيع أن أمشي ببطء أو أُري بطاقة التوقّف.",
    ),
    ("Boat", "القارب"),
    (
        "I sit in the boat with my helper.",
        "أجلس في القارب مع مساعدي.",
    ),
    ("The boat may rock.", "قد يتأرجح القارب."),
    (
        "I can hold the side or show Stop.",
        "أستطيع أن أمسك بالحافة أو أُري بطاقة التوقّف.",
    ),
    ("Dry", "التجفيف"),
    (
        "I dry my arms and legs with a towel.",
        "أجفّف ذراعيّ وساقيّ بمنشفة.",
    ),
    ("The towel may feel rough.", "قد تكون المنشفة خشنة."),
    ("Bye", "إلى اللقاء"),
    (
        "My group says bye, and the session is finished.",
        "تقول مجموعتي إلى اللقاء، وينتهي اليوم.",
    ),
    ("What can change", "ما قد يتغيّر"),
    ("The plan may change.", "قد تتغيّر الخطّة."),
    (
        "Then my helper can show me the tile Change.",
        "عندها يستطيع مساعدي أن يُريني صورة التغيير.",
    ),
    (
        "One tile comes off and a new tile goes on.",
        "تُرفع صورة وتوضع صورة جديدة.",
    ),
    ("If we stay dry", "إذا بقينا على اليابسة"),
    ("I can ask", "أستطيع أن أطلب"),
    ("I can ask at any time.", "أستطيع أن أطلب في أي وقت."),
    (
        "The card Help asks for help.",
        "بطاقة المساعدة تطلب المساعدة.",
    ),
    ("The card Stop asks to stop.", "بطاقة التوقّف تطلب التوقّف."),
    (
        "The card Break asks for a break.",
        "بطاقة الاستراحة تطلب استراحة.",
    ),
    ("How it ends", "كيف ينتهي"),
    (
        "It usually ends at about 11:00.",
        "ينتهي عادةً نحو الساعة ١١:٠٠.",
    ),
    (
        "A trusted grown-up collects me.",
        "يأخذني شخص كبير موثوق به.",
    ),
    (
        "The card Toilet asks for the toilet.",
        "بطاقة الحمّام تطلب الذهاب إلى الحمّام.",
    ),
    (
        "My helper can wait with me until then.",
        "يستطيع مساعدي أن ينتظر معي حتى ذلك الوقت.",
    ),
];

/// All of it.
pub(super) fn arabic() -> Second {
    let text = |(of, text): &(&str, &str)| ((*of).to_owned(), (*text).to_owned());
    Second {
        language: "ar".to_owned(),
        first: false,
        checked_by: String::new(),
        texts: ARABIC.iter().map(text).collect(),
    }
}

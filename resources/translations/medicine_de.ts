<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>medicine</name>
    <message>
        <source>Intake</source>
        <translation>Aufnahme</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation>Stehend</translation>
    </message>
    <message>
        <source>Gait</source>
        <translation>Gang</translation>
    </message>
    <message>
        <source>Seated</source>
        <translation>Sitzend</translation>
    </message>
    <message>
        <source>Lying and provocation</source>
        <translation>Liegend und Provokation</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Durchsicht</translation>
    </message>
    <message>
        <source>Complaint</source>
        <translation>Beschwerden</translation>
    </message>
    <message>
        <source>Pain drawing</source>
        <translation>Schmerzzeichnung</translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation>Zeichnung</translation>
    </message>
    <message>
        <source>Bladder, bowel, saddle</source>
        <translation>Blase, Darm, Reithose</translation>
    </message>
    <message>
        <source>Warning questions</source>
        <translation>Warnfragen</translation>
    </message>
    <message>
        <source>Serious illness</source>
        <translation>Ernste Erkrankung</translation>
    </message>
    <message>
        <source>Pattern of the pain</source>
        <translation>Muster der Schmerzen</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Muster</translation>
    </message>
    <message>
        <source>Inflammatory pattern</source>
        <translation>Entzündliches Muster</translation>
    </message>
    <message>
        <source>Measures and scores</source>
        <translation>Messwerte und Punktzahlen</translation>
    </message>
    <message>
        <source>Measures</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>Activities that matter</source>
        <translation>Wichtige Tätigkeiten</translation>
    </message>
    <message>
        <source>Inspection</source>
        <translation>Inspektion</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Ansehen</translation>
    </message>
    <message>
        <source>Motion</source>
        <translation>Beweglichkeit</translation>
    </message>
    <message>
        <source>Palpation</source>
        <translation>Palpation</translation>
    </message>
    <message>
        <source>Behavioral signs</source>
        <translation>Verhaltenszeichen</translation>
    </message>
    <message>
        <source>Walking</source>
        <translation>Gehen</translation>
    </message>
    <message>
        <source>Reflexes</source>
        <translation>Reflexe</translation>
    </message>
    <message>
        <source>Reflexes, strength</source>
        <translation>Reflexe, Kraft</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Kraft</translation>
    </message>
    <message>
        <source>Light touch</source>
        <translation>Berührung</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation>Haut</translation>
    </message>
    <message>
        <source>Pinprick</source>
        <translation>Spitzreiz</translation>
    </message>
    <message>
        <source>Deep sensation</source>
        <translation>Tiefensensibilität</translation>
    </message>
    <message>
        <source>Deep, vessels</source>
        <translation>Tiefe, Gefäße</translation>
    </message>
    <message>
        <source>Nerve tension</source>
        <translation>Nervendehnung</translation>
    </message>
    <message>
        <source>Tension, hip</source>
        <translation>Dehnung, Hüfte</translation>
    </message>
    <message>
        <source>Nerve tapping</source>
        <translation>Nervenbeklopfen</translation>
    </message>
    <message>
        <source>Hip</source>
        <translation>Hüfte</translation>
    </message>
    <message>
        <source>Vessels</source>
        <translation>Gefäße</translation>
    </message>
    <message>
        <source>Tension, strength</source>
        <translation>Dehnung, Kraft</translation>
    </message>
    <message>
        <source>Hip, sacroiliac</source>
        <translation>Hüfte, Iliosakralgelenk</translation>
    </message>
    <message>
        <source>Sacroiliac joint</source>
        <translation>Iliosakralgelenk</translation>
    </message>
    <message>
        <source>Light touch, saddle</source>
        <translation>Berührung, Reithose</translation>
    </message>
    <message>
        <source>Saddle, abdomen</source>
        <translation>Reithose, Bauch</translation>
    </message>
    <message>
        <source>Pinprick, saddle</source>
        <translation>Spitzreiz, Reithose</translation>
    </message>
    <message>
        <source>Abdomen and perineum</source>
        <translation>Bauch und Damm</translation>
    </message>
    <message>
        <source>Lengths and girths</source>
        <translation>Längen und Umfänge</translation>
    </message>
    <message>
        <source>Vessels, lengths</source>
        <translation>Gefäße, Längen</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>0</source>
        <translation>0</translation>
    </message>
    <message>
        <source>1</source>
        <translation>1</translation>
    </message>
    <message>
        <source>2</source>
        <translation>2</translation>
    </message>
    <message>
        <source>3</source>
        <translation>3</translation>
    </message>
    <message>
        <source>4−</source>
        <translation>4−</translation>
    </message>
    <message>
        <source>4</source>
        <translation>4</translation>
    </message>
    <message>
        <source>4+</source>
        <translation>4+</translation>
    </message>
    <message>
        <source>5</source>
        <translation>5</translation>
    </message>
    <message>
        <source>Normal</source>
        <translation>Normal</translation>
    </message>
    <message>
        <source>Reduced</source>
        <translation>Vermindert</translation>
    </message>
    <message>
        <source>Absent</source>
        <translation>Fehlend</translation>
    </message>
    <message>
        <source>Heightened</source>
        <translation>Gesteigert</translation>
    </message>
    <message>
        <source>Difficult</source>
        <translation>Erschwert</translation>
    </message>
    <message>
        <source>Unable</source>
        <translation>Unmöglich</translation>
    </message>
    <message>
        <source>Felt</source>
        <translation>Tastbar</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Beugend</translation>
    </message>
    <message>
        <source>Equivocal</source>
        <translation>Unklar</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Streckend</translation>
    </message>
    <message>
        <source>Mute</source>
        <translation>Stumm</translation>
    </message>
    <message>
        <source>Negative</source>
        <translation>Negativ</translation>
    </message>
    <message>
        <source>Hamstring</source>
        <translation>Oberschenkelrückseite</translation>
    </message>
    <message>
        <source>Back pain</source>
        <translation>Rückenschmerz</translation>
    </message>
    <message>
        <source>Leg pain</source>
        <translation>Beinschmerz</translation>
    </message>
    <message>
        <source>Local pain</source>
        <translation>Örtlicher Schmerz</translation>
    </message>
    <message>
        <source>Familiar pain</source>
        <translation>Bekannter Schmerz</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>Mild</source>
        <translation>Leicht</translation>
    </message>
    <message>
        <source>Marked</source>
        <translation>Ausgeprägt</translation>
    </message>
    <message>
        <source>Ache</source>
        <translation>Dumpf</translation>
    </message>
    <message>
        <source>Sharp</source>
        <translation>Stechend</translation>
    </message>
    <message>
        <source>Pins</source>
        <translation>Kribbeln</translation>
    </message>
    <message>
        <source>Numb</source>
        <translation>Taub</translation>
    </message>
    <message>
        <source>Main complaint, in the patient's words</source>
        <translation>Hauptbeschwerde in den Worten des Patienten</translation>
    </message>
    <message>
        <source>Weeks since onset</source>
        <translation>Wochen seit Beginn</translation>
    </message>
    <message>
        <source>How it began</source>
        <translation>Wie es begann</translation>
    </message>
    <message>
        <source>Gradual</source>
        <translation>Allmählich</translation>
    </message>
    <message>
        <source>After lifting</source>
        <translation>Nach Heben</translation>
    </message>
    <message>
        <source>Minor trauma</source>
        <translation>Leichtes Trauma</translation>
    </message>
    <message>
        <source>Major trauma</source>
        <translation>Schweres Trauma</translation>
    </message>
    <message>
        <source>None recalled</source>
        <translation>Nicht erinnerlich</translation>
    </message>
    <message>
        <source>How it was hurt</source>
        <translation>Art der Verletzung</translation>
    </message>
    <message>
        <source>No injury</source>
        <translation>Keine Verletzung</translation>
    </message>
    <message>
        <source>Fall from standing</source>
        <translation>Sturz aus dem Stand</translation>
    </message>
    <message>
        <source>Fall from a height</source>
        <translation>Sturz aus der Höhe</translation>
    </message>
    <message>
        <source>Road accident</source>
        <translation>Verkehrsunfall</translation>
    </message>
    <message>
        <source>Direct blow</source>
        <translation>Direkter Stoß</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Anderes</translation>
    </message>
    <message>
        <source>How fast it came on</source>
        <translation>Wie schnell es kam</translation>
    </message>
    <message>
        <source>Sudden</source>
        <translation>Plötzlich</translation>
    </message>
    <message>
        <source>Hours to days</source>
        <translation>Stunden bis Tage</translation>
    </message>
    <message>
        <source>Weeks</source>
        <translation>Wochen</translation>
    </message>
    <message>
        <source>Months to years</source>
        <translation>Monate bis Jahre</translation>
    </message>
    <message>
        <source>Pain between the shoulder blades or round the chest</source>
        <translation>Schmerz zwischen den Schulterblättern oder gürtelförmig um die Brust</translation>
    </message>
    <message>
        <source>Belly or flank pain</source>
        <translation>Bauch- oder Flankenschmerz</translation>
    </message>
    <message>
        <source>Fainted or felt faint</source>
        <translation>Ohnmacht oder Schwächegefühl</translation>
    </message>
    <message>
        <source>Course since then</source>
        <translation>Verlauf seitdem</translation>
    </message>
    <message>
        <source>Improving</source>
        <translation>Besser werdend</translation>
    </message>
    <message>
        <source>Unchanged</source>
        <translation>Unverändert</translation>
    </message>
    <message>
        <source>Worsening</source>
        <translation>Schlechter werdend</translation>
    </message>
    <message>
        <source>Back pain now</source>
        <translation>Rückenschmerz jetzt</translation>
    </message>
    <message>
        <source>Leg pain now</source>
        <translation>Beinschmerz jetzt</translation>
    </message>
    <message>
        <source>Leg pain goes below the knee</source>
        <translation>Beinschmerz reicht unter das Knie</translation>
    </message>
    <message>
        <source>Tingling or numbness felt in the leg</source>
        <translation>Kribbeln oder Taubheit im Bein</translation>
    </message>
    <message>
        <source>Groin pain</source>
        <translation>Leistenschmerz</translation>
    </message>
    <message>
        <source>Leg weakness noticed</source>
        <translation>Schwäche im Bein bemerkt</translation>
    </message>
    <message>
        <source>Worse sitting</source>
        <translation>Schlimmer im Sitzen</translation>
    </message>
    <message>
        <source>Worse standing or walking</source>
        <translation>Schlimmer im Stehen oder Gehen</translation>
    </message>
    <message>
        <source>Standing still brings it on</source>
        <translation>Stillstehen löst es aus</translation>
    </message>
    <message>
        <source>Walking pain is above or below the knee</source>
        <translation>Schmerz beim Gehen über oder unter dem Knie</translation>
    </message>
    <message>
        <source>Above</source>
        <translation>Darüber</translation>
    </message>
    <message>
        <source>Below</source>
        <translation>Darunter</translation>
    </message>
    <message>
        <source>Both</source>
        <translation>Beides</translation>
    </message>
    <message>
        <source>Worse bending forward</source>
        <translation>Schlimmer beim Vorbeugen</translation>
    </message>
    <message>
        <source>Worse on cough or sneeze</source>
        <translation>Schlimmer bei Husten oder Niesen</translation>
    </message>
    <message>
        <source>Eased by sitting or leaning forward</source>
        <translation>Besser im Sitzen oder vorgebeugt</translation>
    </message>
    <message>
        <source>Eased by lying down</source>
        <translation>Besser im Liegen</translation>
    </message>
    <message>
        <source>Leg pain on walking eases on standing still, upright</source>
        <translation>Beinschmerz beim Gehen lässt beim aufrechten Stehenbleiben nach</translation>
    </message>
    <message>
        <source>Wakes at night, not eased by changing position</source>
        <translation>Weckt nachts, Lagewechsel hilft nicht</translation>
    </message>
    <message>
        <source>Habit of leg crossing, kneeling, squatting, or recent cast or knee brace</source>
        <translation>Gewohntes Beinüberschlagen, Knien, Hocken oder kürzlich Gips oder Knieschiene</translation>
    </message>
    <message>
        <source>Tight belt, rapid weight gain, or recent prone positioning</source>
        <translation>Enger Gürtel, rasche Gewichtszunahme oder kürzliche Bauchlagerung</translation>
    </message>
    <message>
        <source>Walking distance before stopping</source>
        <translation>Gehstrecke bis zum Anhalten</translation>
    </message>
    <message>
        <source>Bladder: start, flow or feeling of fullness</source>
        <translation>Blase: Beginn, Strahl oder Füllungsgefühl</translation>
    </message>
    <message>
        <source>Altered</source>
        <translation>Verändert</translation>
    </message>
    <message>
        <source>Retention</source>
        <translation>Harnverhalt</translation>
    </message>
    <message>
        <source>Leaks</source>
        <translation>Ungewollter Verlust</translation>
    </message>
    <message>
        <source>Long-standing, unchanged</source>
        <translation>Seit langem, unverändert</translation>
    </message>
    <message>
        <source>Bowel</source>
        <translation>Darm</translation>
    </message>
    <message>
        <source>Altered or constipated</source>
        <translation>Verändert oder verstopft</translation>
    </message>
    <message>
        <source>Cannot feel a full rectum</source>
        <translation>Spürt den vollen Enddarm nicht</translation>
    </message>
    <message>
        <source>Numb, tingling or different between the legs</source>
        <translation>Taub, kribbelnd oder anders zwischen den Beinen</translation>
    </message>
    <message>
        <source>Change in sexual function</source>
        <translation>Veränderte Sexualfunktion</translation>
    </message>
    <message>
        <source>Symptoms in both legs</source>
        <translation>Beschwerden in beiden Beinen</translation>
    </message>
    <message>
        <source>Weakness getting worse over days or weeks</source>
        <translation>Schwäche nimmt über Tage oder Wochen zu</translation>
    </message>
    <message>
        <source>Weeks since the weakness began</source>
        <translation>Wochen seit Beginn der Schwäche</translation>
    </message>
    <message>
        <source>Trouble breathing or swallowing</source>
        <translation>Atem- oder Schluckstörung</translation>
    </message>
    <message>
        <source>New droop of the face, slurred speech or weak arm</source>
        <translation>Neu hängendes Gesicht, verwaschene Sprache oder schwacher Arm</translation>
    </message>
    <message>
        <source>Cancer other than minor skin cancer, now or before</source>
        <translation>Krebs außer leichtem Hautkrebs, jetzt oder früher</translation>
    </message>
    <message>
        <source>When the cancer was</source>
        <translation>Wann der Krebs war</translation>
    </message>
    <message>
        <source>Active now</source>
        <translation>Jetzt aktiv</translation>
    </message>
    <message>
        <source>Within 10 years</source>
        <translation>In den letzten 10 Jahren</translation>
    </message>
    <message>
        <source>Longer ago</source>
        <translation>Länger her</translation>
    </message>
    <message>
        <source>Unexplained weight loss</source>
        <translation>Ungeklärter Gewichtsverlust</translation>
    </message>
    <message>
        <source>Fever or rigors</source>
        <translation>Fieber oder Schüttelfrost</translation>
    </message>
    <message>
        <source>Sweats without fever</source>
        <translation>Schwitzen ohne Fieber</translation>
    </message>
    <message>
        <source>Recent infection (last 3 months)</source>
        <translation>Kürzliche Infektion (letzte 3 Monate)</translation>
    </message>
    <message>
        <source>Spinal injection, puncture or surgery (last 3 months)</source>
        <translation>Injektion, Punktion oder Operation an der Wirbelsäule (letzte 3 Monate)</translation>
    </message>
    <message>
        <source>Injected drug use</source>
        <translation>Drogen intravenös</translation>
    </message>
    <message>
        <source>Immunosuppressed</source>
        <translation>Immunsupprimiert</translation>
    </message>
    <message>
        <source>Prolonged corticosteroids</source>
        <translation>Längere Kortisonbehandlung</translation>
    </message>
    <message>
        <source>Known osteoporosis</source>
        <translation>Bekannte Osteoporose</translation>
    </message>
    <message>
        <source>Spine known to be stiffened by ankylosing disease</source>
        <translation>Bekannt versteifte Wirbelsäule (ankylosierende Erkrankung)</translation>
    </message>
    <message>
        <source>Anticoagulant or antiplatelet treatment</source>
        <translation>Gerinnungshemmer oder Plättchenhemmer</translation>
    </message>
    <message>
        <source>Known aortic aneurysm</source>
        <translation>Bekanntes Aortenaneurysma</translation>
    </message>
    <message>
        <source>Smoker, now or before</source>
        <translation>Raucher, jetzt oder früher</translation>
    </message>
    <message>
        <source>Diabetes</source>
        <translation>Diabetes</translation>
    </message>
    <message>
        <source>Heavy alcohol use</source>
        <translation>Starker Alkoholkonsum</translation>
    </message>
    <message>
        <source>Known arterial disease</source>
        <translation>Bekannte arterielle Erkrankung</translation>
    </message>
    <message>
        <source>Foot pain at rest, eased by hanging the leg down</source>
        <translation>Ruheschmerz im Fuß, besser bei herabhängendem Bein</translation>
    </message>
    <message>
        <source>Previous spine surgery</source>
        <translation>Frühere Wirbelsäulenoperation</translation>
    </message>
    <message>
        <source>Recent hip, knee or pelvic surgery or childbirth</source>
        <translation>Kürzlich Hüft-, Knie- oder Beckenoperation oder Geburt</translation>
    </message>
    <message>
        <source>Known pelvic or retroperitoneal mass or bleed</source>
        <translation>Bekannte Raumforderung oder Blutung im Becken oder Retroperitoneum</translation>
    </message>
    <message>
        <source>Recent blistering rash</source>
        <translation>Kürzlich Ausschlag mit Bläschen</translation>
    </message>
    <message>
        <source>Back pain began before age 40</source>
        <translation>Rückenschmerz begann vor dem 40. Lebensjahr</translation>
    </message>
    <message>
        <source>Crept on</source>
        <translation>Schleichender Beginn</translation>
    </message>
    <message>
        <source>Better with exercise</source>
        <translation>Besser bei Bewegung</translation>
    </message>
    <message>
        <source>No better with rest</source>
        <translation>Nicht besser in Ruhe</translation>
    </message>
    <message>
        <source>Night pain that eases on getting up</source>
        <translation>Nachtschmerz, der beim Aufstehen nachlässt</translation>
    </message>
    <message>
        <source>Uveitis, psoriasis or inflammatory bowel disease</source>
        <translation>Uveitis, Psoriasis oder entzündliche Darmerkrankung</translation>
    </message>
    <message>
        <source>Which of them</source>
        <translation>Welche davon</translation>
    </message>
    <message>
        <source>Uveitis</source>
        <translation>Uveitis</translation>
    </message>
    <message>
        <source>Psoriasis</source>
        <translation>Psoriasis</translation>
    </message>
    <message>
        <source>Bowel disease</source>
        <translation>Darmerkrankung</translation>
    </message>
    <message>
        <source>Several</source>
        <translation>Mehrere</translation>
    </message>
    <message>
        <source>Spondyloarthritis in the family</source>
        <translation>Spondyloarthritis in der Familie</translation>
    </message>
    <message>
        <source>Morning stiffness</source>
        <translation>Morgensteifigkeit</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Heart rate</source>
        <translation>Herzfrequenz</translation>
    </message>
    <message>
        <source>Systolic blood pressure</source>
        <translation>Systolischer Blutdruck</translation>
    </message>
    <message>
        <source>Diastolic blood pressure</source>
        <translation>Diastolischer Blutdruck</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Körpergröße</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>Roland-Morris total</source>
        <translation>Roland-Morris, Summe</translation>
    </message>
    <message>
        <source>Oswestry total (percent)</source>
        <translation>Oswestry, Summe (Prozent)</translation>
    </message>
    <message>
        <source>PROMIS pain interference (T-score)</source>
        <translation>PROMIS Schmerzbeeinträchtigung (T-Wert)</translation>
    </message>
    <message>
        <source>An activity that matters to the patient (1)</source>
        <translation>Eine für den Patienten wichtige Tätigkeit (1)</translation>
    </message>
    <message>
        <source>Ability for activity 1 (0 unable, 10 as before)</source>
        <translation>Fähigkeit zu Tätigkeit 1 (0 unmöglich, 10 wie früher)</translation>
    </message>
    <message>
        <source>An activity that matters to the patient (2)</source>
        <translation>Eine für den Patienten wichtige Tätigkeit (2)</translation>
    </message>
    <message>
        <source>Ability for activity 2 (0 unable, 10 as before)</source>
        <translation>Fähigkeit zu Tätigkeit 2 (0 unmöglich, 10 wie früher)</translation>
    </message>
    <message>
        <source>An activity that matters to the patient (3)</source>
        <translation>Eine für den Patienten wichtige Tätigkeit (3)</translation>
    </message>
    <message>
        <source>Ability for activity 3 (0 unable, 10 as before)</source>
        <translation>Fähigkeit zu Tätigkeit 3 (0 unmöglich, 10 wie früher)</translation>
    </message>
    <message>
        <source>Residual after voiding</source>
        <translation>Restharn</translation>
    </message>
    <message>
        <source>Comfort at rest</source>
        <translation>Befinden in Ruhe</translation>
    </message>
    <message>
        <source>Comfortable</source>
        <translation>Entspannt</translation>
    </message>
    <message>
        <source>Uncomfortable</source>
        <translation>Unbequem</translation>
    </message>
    <message>
        <source>Marked distress</source>
        <translation>Starke Beschwerden</translation>
    </message>
    <message>
        <source>Skin folds</source>
        <translation>Hautfalten</translation>
    </message>
    <message>
        <source>Symmetric</source>
        <translation>Symmetrisch</translation>
    </message>
    <message>
        <source>Asymmetric</source>
        <translation>Asymmetrisch</translation>
    </message>
    <message>
        <source>Shoulders</source>
        <translation>Schultern</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Gleich hoch</translation>
    </message>
    <message>
        <source>Right high</source>
        <translation>Rechts höher</translation>
    </message>
    <message>
        <source>Left high</source>
        <translation>Links höher</translation>
    </message>
    <message>
        <source>Iliac crests</source>
        <translation>Beckenkämme</translation>
    </message>
    <message>
        <source>Block height that levels the crests</source>
        <translation>Brettchenhöhe bis zum Beckengeradstand</translation>
    </message>
    <message>
        <source>Lateral shift of the trunk</source>
        <translation>Seitliche Rumpfverschiebung</translation>
    </message>
    <message>
        <source>To right</source>
        <translation>Nach rechts</translation>
    </message>
    <message>
        <source>To left</source>
        <translation>Nach links</translation>
    </message>
    <message>
        <source>Lumbar curve</source>
        <translation>Lendenlordose</translation>
    </message>
    <message>
        <source>Flattened</source>
        <translation>Abgeflacht</translation>
    </message>
    <message>
        <source>Increased</source>
        <translation>Verstärkt</translation>
    </message>
    <message>
        <source>Skin over the back and leg</source>
        <translation>Haut an Rücken und Bein</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Unauffällig</translation>
    </message>
    <message>
        <source>Scar</source>
        <translation>Narbe</translation>
    </message>
    <message>
        <source>Midline mark</source>
        <translation>Auffälligkeit der Mittellinie</translation>
    </message>
    <message>
        <source>Vesicles</source>
        <translation>Bläschen</translation>
    </message>
    <message>
        <source>Bruise or graze over the spine</source>
        <translation>Bluterguss oder Schürfung über der Wirbelsäule</translation>
    </message>
    <message>
        <source>Blisters or scabs along</source>
        <translation>Bläschen oder Krusten entlang</translation>
    </message>
    <message>
        <source>Groin upper thigh</source>
        <translation>Leiste, oberer Oberschenkel</translation>
    </message>
    <message>
        <source>Front thigh knee</source>
        <translation>Oberschenkel vorn, Knie</translation>
    </message>
    <message>
        <source>Inner leg</source>
        <translation>Bein innen</translation>
    </message>
    <message>
        <source>Outer leg foot top</source>
        <translation>Bein außen, Fußrücken</translation>
    </message>
    <message>
        <source>Back of leg outer foot</source>
        <translation>Bein hinten, Fußaußenrand</translation>
    </message>
    <message>
        <source>Buttock saddle</source>
        <translation>Gesäß, Reithose</translation>
    </message>
    <message>
        <source>Muscle wasting</source>
        <translation>Muskelatrophie</translation>
    </message>
    <message>
        <source>Calf</source>
        <translation>Wade</translation>
    </message>
    <message>
        <source>Anterior leg</source>
        <translation>Unterschenkel vorn</translation>
    </message>
    <message>
        <source>Thigh</source>
        <translation>Oberschenkel</translation>
    </message>
    <message>
        <source>Buttock</source>
        <translation>Gesäß</translation>
    </message>
    <message>
        <source>Calf swollen, warm or tender</source>
        <translation>Wade geschwollen, warm oder druckschmerzhaft</translation>
    </message>
    <message>
        <source>Chest expansion</source>
        <translation>Atembreite</translation>
    </message>
    <message>
        <source>Fingertips to floor, bending forward</source>
        <translation>Finger-Boden-Abstand</translation>
    </message>
    <message>
        <source>Modified Schober gain</source>
        <translation>Schober-Maß, modifiziert</translation>
    </message>
    <message>
        <source>Forward bend</source>
        <translation>Vorbeugen</translation>
    </message>
    <message>
        <source>Forward bend: pain</source>
        <translation>Vorbeugen: Schmerz</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Rücken</translation>
    </message>
    <message>
        <source>Leg</source>
        <translation>Bein</translation>
    </message>
    <message>
        <source>Backward bend</source>
        <translation>Rückbeugen</translation>
    </message>
    <message>
        <source>Backward bend: pain</source>
        <translation>Rückbeugen: Schmerz</translation>
    </message>
    <message>
        <source>Side bend</source>
        <translation>Seitneigung</translation>
    </message>
    <message>
        <source>Side bend: pain</source>
        <translation>Seitneigung: Schmerz</translation>
    </message>
    <message>
        <source>Rotation</source>
        <translation>Rotation</translation>
    </message>
    <message>
        <source>Rotation: pain</source>
        <translation>Rotation: Schmerz</translation>
    </message>
    <message>
        <source>Rib or loin hump on bending</source>
        <translation>Rippenbuckel oder Lendenwulst beim Vorbeugen</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>Trunk inclination</source>
        <translation>Rumpfneigung</translation>
    </message>
    <message>
        <source>Coming back up from the bend</source>
        <translation>Aufrichten aus der Beugung</translation>
    </message>
    <message>
        <source>Smooth</source>
        <translation>Flüssig</translation>
    </message>
    <message>
        <source>Hands on thighs</source>
        <translation>Hände an den Oberschenkeln</translation>
    </message>
    <message>
        <source>Sway back</source>
        <translation>Mit Hüftschwung</translation>
    </message>
    <message>
        <source>Painful catch</source>
        <translation>Schmerzhaftes Stocken</translation>
    </message>
    <message>
        <source>Paraspinal muscle tone</source>
        <translation>Tonus der Rückenstrecker</translation>
    </message>
    <message>
        <source>Soft</source>
        <translation>Weich</translation>
    </message>
    <message>
        <source>Firm</source>
        <translation>Fest</translation>
    </message>
    <message>
        <source>Hard</source>
        <translation>Hart</translation>
    </message>
    <message>
        <source>Midline tenderness</source>
        <translation>Druckschmerz der Mittellinie</translation>
    </message>
    <message>
        <source>Upper lumbar</source>
        <translation>Obere LWS</translation>
    </message>
    <message>
        <source>Lower lumbar</source>
        <translation>Untere LWS</translation>
    </message>
    <message>
        <source>Lumbosacral</source>
        <translation>Lumbosakral</translation>
    </message>
    <message>
        <source>Diffuse</source>
        <translation>Diffus</translation>
    </message>
    <message>
        <source>Percussion tenderness of the spine</source>
        <translation>Klopfschmerz der Wirbelsäule</translation>
    </message>
    <message>
        <source>Palpable step</source>
        <translation>Tastbare Stufe</translation>
    </message>
    <message>
        <source>Tender over the posterior superior iliac spine</source>
        <translation>Druckschmerz über der Spina iliaca posterior superior</translation>
    </message>
    <message>
        <source>Tender over the greater trochanter</source>
        <translation>Druckschmerz über dem Trochanter major</translation>
    </message>
    <message>
        <source>Tender to light touch over a wide area</source>
        <translation>Großflächiger Schmerz bei leichter Berührung</translation>
    </message>
    <message>
        <source>Deep tenderness crossing anatomical borders</source>
        <translation>Tiefer Druckschmerz über anatomische Grenzen hinweg</translation>
    </message>
    <message>
        <source>Back pain on light pressure on the head</source>
        <translation>Rückenschmerz bei leichtem Druck auf den Kopf</translation>
    </message>
    <message>
        <source>Back pain when shoulders and pelvis turn together</source>
        <translation>Rückenschmerz bei gemeinsamer Drehung von Schultern und Becken</translation>
    </message>
    <message>
        <source>Weak hip extension returns when the other leg lifts</source>
        <translation>Schwache Hüftstreckung kehrt beim Heben des anderen Beins zurück</translation>
    </message>
    <message>
        <source>Disproportionate reaction during the examination</source>
        <translation>Unverhältnismäßige Reaktion bei der Untersuchung</translation>
    </message>
    <message>
        <source>Giving way across many muscle groups, without a neurological pattern</source>
        <translation>Nachgeben vieler Muskelgruppen ohne neurologisches Muster</translation>
    </message>
    <message>
        <source>Sensory change of a whole leg or half the body, fitting no root, nerve or length</source>
        <translation>Gefühlsstörung eines ganzen Beins oder einer Körperhälfte, zu keiner Wurzel, keinem Nerv und keinem Längenmuster passend</translation>
    </message>
    <message>
        <source>Walking pattern</source>
        <translation>Gangbild</translation>
    </message>
    <message>
        <source>Antalgic</source>
        <translation>Schonhinkend</translation>
    </message>
    <message>
        <source>Foot slap</source>
        <translation>Aufklatschender Fuß</translation>
    </message>
    <message>
        <source>Steppage</source>
        <translation>Steppergang</translation>
    </message>
    <message>
        <source>Trendelenburg</source>
        <translation>Trendelenburg</translation>
    </message>
    <message>
        <source>Stooped</source>
        <translation>Vorgebeugt</translation>
    </message>
    <message>
        <source>Wide based</source>
        <translation>Breitbasig</translation>
    </message>
    <message>
        <source>Spastic</source>
        <translation>Spastisch</translation>
    </message>
    <message>
        <source>Scissor</source>
        <translation>Scherengang</translation>
    </message>
    <message>
        <source>Foot slaps or drops</source>
        <translation>Fuß klatscht auf oder hängt</translation>
    </message>
    <message>
        <source>Limp</source>
        <translation>Hinken</translation>
    </message>
    <message>
        <source>Walks on the heel</source>
        <translation>Fersengang</translation>
    </message>
    <message>
        <source>Walks on the toes</source>
        <translation>Zehengang</translation>
    </message>
    <message>
        <source>Single-leg heel raises</source>
        <translation>Einbeinige Fersenhebungen</translation>
    </message>
    <message>
        <source>Rises from a chair on one leg</source>
        <translation>Aufstehen vom Stuhl auf einem Bein</translation>
    </message>
    <message>
        <source>Squats and rises</source>
        <translation>Hocken und Aufstehen</translation>
    </message>
    <message>
        <source>Hopping on this leg is sharply painful</source>
        <translation>Hüpfen auf diesem Bein sticht</translation>
    </message>
    <message>
        <source>Pelvis drops when standing on this leg</source>
        <translation>Becken sinkt im Stand auf diesem Bein ab</translation>
    </message>
    <message>
        <source>Heel-to-toe walking</source>
        <translation>Seiltänzergang</translation>
    </message>
    <message>
        <source>Sways with the eyes closed</source>
        <translation>Schwankt bei geschlossenen Augen (Romberg)</translation>
    </message>
    <message>
        <source>Knee reflex</source>
        <translation>Patellarsehnenreflex</translation>
    </message>
    <message>
        <source>Knee</source>
        <translation>Patellarsehne</translation>
    </message>
    <message>
        <source>Ankle reflex</source>
        <translation>Achillessehnenreflex</translation>
    </message>
    <message>
        <source>Ankle</source>
        <translation>Achillessehne</translation>
    </message>
    <message>
        <source>Medial hamstring reflex</source>
        <translation>Semimembranosus-Semitendinosus-Reflex</translation>
    </message>
    <message>
        <source>Medial hamstring</source>
        <translation>Mediale ischiokrurale Muskeln</translation>
    </message>
    <message>
        <source>Adductor reflex</source>
        <translation>Adduktorenreflex</translation>
    </message>
    <message>
        <source>Adductor</source>
        <translation>Adduktoren</translation>
    </message>
    <message>
        <source>Reinforcement used (hooked fingers, pull)</source>
        <translation>Bahnung verwendet (Jendrassik-Handgriff)</translation>
    </message>
    <message>
        <source>Plantar response</source>
        <translation>Fußsohlenreflex (Babinski)</translation>
    </message>
    <message>
        <source>Sustained ankle clonus</source>
        <translation>Anhaltender Fußklonus</translation>
    </message>
    <message>
        <source>Leg tone</source>
        <translation>Beintonus</translation>
    </message>
    <message>
        <source>Flaccid</source>
        <translation>Schlaff</translation>
    </message>
    <message>
        <source>Hip flexion</source>
        <translation>Hüftbeugung</translation>
    </message>
    <message>
        <source>Hip adduction</source>
        <translation>Hüftadduktion</translation>
    </message>
    <message>
        <source>Knee extension</source>
        <translation>Kniestreckung</translation>
    </message>
    <message>
        <source>Knee flexion</source>
        <translation>Kniebeugung</translation>
    </message>
    <message>
        <source>Ankle dorsiflexion</source>
        <translation>Fußhebung</translation>
    </message>
    <message>
        <source>Great-toe extension</source>
        <translation>Großzehenhebung</translation>
    </message>
    <message>
        <source>Lesser-toe extension</source>
        <translation>Kleinzehenhebung</translation>
    </message>
    <message>
        <source>Foot inversion</source>
        <translation>Fußinversion</translation>
    </message>
    <message>
        <source>Foot eversion</source>
        <translation>Fußeversion</translation>
    </message>
    <message>
        <source>Ankle plantarflexion</source>
        <translation>Fußsenkung</translation>
    </message>
    <message>
        <source>Toe flexion</source>
        <translation>Zehenbeugung</translation>
    </message>
    <message>
        <source>Hip abduction</source>
        <translation>Hüftabduktion</translation>
    </message>
    <message>
        <source>Hip extension</source>
        <translation>Hüftstreckung</translation>
    </message>
    <message>
        <source>Strength gives way rather than yields</source>
        <translation>Kraft gibt ruckartig nach</translation>
    </message>
    <message>
        <source>Pain limits the effort on this side</source>
        <translation>Schmerz begrenzt den Krafteinsatz auf dieser Seite</translation>
    </message>
    <message>
        <source>Dorsalis pedis pulse</source>
        <translation>Puls der A. dorsalis pedis</translation>
    </message>
    <message>
        <source>Dorsalis pedis</source>
        <translation>A. dorsalis pedis</translation>
    </message>
    <message>
        <source>Posterior tibial pulse</source>
        <translation>Puls der A. tibialis posterior</translation>
    </message>
    <message>
        <source>Posterior tibial</source>
        <translation>A. tibialis posterior</translation>
    </message>
    <message>
        <source>Femoral pulse</source>
        <translation>Femoralispuls</translation>
    </message>
    <message>
        <source>Femoral</source>
        <translation>A. femoralis</translation>
    </message>
    <message>
        <source>Ankle-brachial index</source>
        <translation>Knöchel-Arm-Index</translation>
    </message>
    <message>
        <source>Leg cold or pale against the other</source>
        <translation>Bein kalt oder blass gegenüber dem anderen</translation>
    </message>
    <message>
        <source>Ulcer or gangrene of the foot</source>
        <translation>Ulkus oder Gangrän am Fuß</translation>
    </message>
    <message>
        <source>Vibration at the great toe</source>
        <translation>Vibration an der Großzehe</translation>
    </message>
    <message>
        <source>Joint position at the great toe</source>
        <translation>Lagesinn der Großzehe</translation>
    </message>
    <message>
        <source>Tapping the fibular neck tingles down the leg</source>
        <translation>Beklopfen des Fibulahalses kribbelt im Bein (Hoffmann-Tinel)</translation>
    </message>
    <message>
        <source>Tapping behind the medial malleolus tingles into the sole</source>
        <translation>Beklopfen hinter dem Innenknöchel kribbelt in die Sohle (Hoffmann-Tinel)</translation>
    </message>
    <message>
        <source>Tapping medial to the front hip bone tingles into the outer thigh</source>
        <translation>Beklopfen medial der Spina iliaca anterior kribbelt in den äußeren Oberschenkel (Hoffmann-Tinel)</translation>
    </message>
    <message>
        <source>Groin and inguinal crease: light touch</source>
        <translation>Leiste und Leistenbeuge: Berührung</translation>
    </message>
    <message>
        <source>Groin and inguinal crease</source>
        <translation>Leiste und Leistenbeuge</translation>
    </message>
    <message>
        <source>Upper outer thigh, front: light touch</source>
        <translation>Oberschenkel vorn, oben außen: Berührung</translation>
    </message>
    <message>
        <source>Upper outer thigh, front</source>
        <translation>Oberschenkel vorn, oben außen</translation>
    </message>
    <message>
        <source>Upper inner thigh: light touch</source>
        <translation>Oberschenkel oben innen: Berührung</translation>
    </message>
    <message>
        <source>Upper inner thigh</source>
        <translation>Oberschenkel oben innen</translation>
    </message>
    <message>
        <source>Middle of the front thigh: light touch</source>
        <translation>Mitte des Oberschenkels vorn: Berührung</translation>
    </message>
    <message>
        <source>Middle of the front thigh</source>
        <translation>Mitte des Oberschenkels vorn</translation>
    </message>
    <message>
        <source>Lower inner thigh and inner knee: light touch</source>
        <translation>Oberschenkel unten innen und Knie innen: Berührung</translation>
    </message>
    <message>
        <source>Lower inner thigh and inner knee</source>
        <translation>Oberschenkel unten innen und Knie innen</translation>
    </message>
    <message>
        <source>Outer thigh: light touch</source>
        <translation>Oberschenkel außen: Berührung</translation>
    </message>
    <message>
        <source>Outer thigh</source>
        <translation>Oberschenkel außen</translation>
    </message>
    <message>
        <source>Front of the knee: light touch</source>
        <translation>Knie vorn: Berührung</translation>
    </message>
    <message>
        <source>Front of the knee</source>
        <translation>Knie vorn</translation>
    </message>
    <message>
        <source>Inner shin: light touch</source>
        <translation>Unterschenkel vorn innen: Berührung</translation>
    </message>
    <message>
        <source>Inner shin</source>
        <translation>Unterschenkel vorn innen</translation>
    </message>
    <message>
        <source>Inner ankle: light touch</source>
        <translation>Innenknöchel: Berührung</translation>
    </message>
    <message>
        <source>Inner ankle</source>
        <translation>Innenknöchel</translation>
    </message>
    <message>
        <source>Outer shin: light touch</source>
        <translation>Unterschenkel vorn außen: Berührung</translation>
    </message>
    <message>
        <source>Outer shin</source>
        <translation>Unterschenkel vorn außen</translation>
    </message>
    <message>
        <source>Top of the foot, inner part: light touch</source>
        <translation>Fußrücken innen: Berührung</translation>
    </message>
    <message>
        <source>Top of the foot, inner part</source>
        <translation>Fußrücken innen</translation>
    </message>
    <message>
        <source>Top of the foot, centre: light touch</source>
        <translation>Fußrücken Mitte: Berührung</translation>
    </message>
    <message>
        <source>Top of the foot, centre</source>
        <translation>Fußrücken Mitte</translation>
    </message>
    <message>
        <source>Top of the foot, outer edge: light touch</source>
        <translation>Fußrücken Außenrand: Berührung</translation>
    </message>
    <message>
        <source>Top of the foot, outer edge</source>
        <translation>Fußrücken Außenrand</translation>
    </message>
    <message>
        <source>First web space: light touch</source>
        <translation>Erster Zehenzwischenraum: Berührung</translation>
    </message>
    <message>
        <source>First web space</source>
        <translation>Erster Zehenzwischenraum</translation>
    </message>
    <message>
        <source>Great toe: light touch</source>
        <translation>Großzehe: Berührung</translation>
    </message>
    <message>
        <source>Great toe</source>
        <translation>Großzehe</translation>
    </message>
    <message>
        <source>Second to fourth toes: light touch</source>
        <translation>Zweite bis vierte Zehe: Berührung</translation>
    </message>
    <message>
        <source>Second to fourth toes</source>
        <translation>Zweite bis vierte Zehe</translation>
    </message>
    <message>
        <source>Little toe: light touch</source>
        <translation>Kleinzehe: Berührung</translation>
    </message>
    <message>
        <source>Little toe</source>
        <translation>Kleinzehe</translation>
    </message>
    <message>
        <source>Outer ankle: light touch</source>
        <translation>Außenknöchel: Berührung</translation>
    </message>
    <message>
        <source>Outer ankle</source>
        <translation>Außenknöchel</translation>
    </message>
    <message>
        <source>Heel from behind, outer side: light touch</source>
        <translation>Ferse von hinten, außen: Berührung</translation>
    </message>
    <message>
        <source>Heel from behind, outer side</source>
        <translation>Ferse von hinten, außen</translation>
    </message>
    <message>
        <source>Inner calf: light touch</source>
        <translation>Wade innen: Berührung</translation>
    </message>
    <message>
        <source>Inner calf</source>
        <translation>Wade innen</translation>
    </message>
    <message>
        <source>Back of the calf: light touch</source>
        <translation>Wade hinten: Berührung</translation>
    </message>
    <message>
        <source>Back of the calf</source>
        <translation>Wade hinten</translation>
    </message>
    <message>
        <source>Outer calf: light touch</source>
        <translation>Wade außen: Berührung</translation>
    </message>
    <message>
        <source>Outer calf</source>
        <translation>Wade außen</translation>
    </message>
    <message>
        <source>Hollow behind the knee: light touch</source>
        <translation>Kniekehle: Berührung</translation>
    </message>
    <message>
        <source>Hollow behind the knee</source>
        <translation>Kniekehle</translation>
    </message>
    <message>
        <source>Back of the thigh: light touch</source>
        <translation>Oberschenkel hinten: Berührung</translation>
    </message>
    <message>
        <source>Back of the thigh</source>
        <translation>Oberschenkel hinten</translation>
    </message>
    <message>
        <source>Upper buttock: light touch</source>
        <translation>Gesäß oben: Berührung</translation>
    </message>
    <message>
        <source>Upper buttock</source>
        <translation>Gesäß oben</translation>
    </message>
    <message>
        <source>Lower buttock and fold: light touch</source>
        <translation>Gesäß unten und Falte: Berührung</translation>
    </message>
    <message>
        <source>Lower buttock and fold</source>
        <translation>Gesäß unten und Falte</translation>
    </message>
    <message>
        <source>Low back: light touch</source>
        <translation>Unterer Rücken: Berührung</translation>
    </message>
    <message>
        <source>Low back</source>
        <translation>Unterer Rücken</translation>
    </message>
    <message>
        <source>Sole, inner part: light touch</source>
        <translation>Fußsohle innen: Berührung</translation>
    </message>
    <message>
        <source>Sole, inner part</source>
        <translation>Fußsohle innen</translation>
    </message>
    <message>
        <source>Sole, outer part: light touch</source>
        <translation>Fußsohle außen: Berührung</translation>
    </message>
    <message>
        <source>Sole, outer part</source>
        <translation>Fußsohle außen</translation>
    </message>
    <message>
        <source>Heel pad: light touch</source>
        <translation>Fersenpolster: Berührung</translation>
    </message>
    <message>
        <source>Heel pad</source>
        <translation>Fersenpolster</translation>
    </message>
    <message>
        <source>Around the genitals: light touch</source>
        <translation>Um das Genitale: Berührung</translation>
    </message>
    <message>
        <source>Around the genitals</source>
        <translation>Um das Genitale</translation>
    </message>
    <message>
        <source>Around the anus: light touch</source>
        <translation>Um den After: Berührung</translation>
    </message>
    <message>
        <source>Around the anus</source>
        <translation>Um den After</translation>
    </message>
    <message>
        <source>Inner buttock, saddle area: light touch</source>
        <translation>Gesäß innen, Reithose: Berührung</translation>
    </message>
    <message>
        <source>Inner buttock, saddle area</source>
        <translation>Gesäß innen, Reithose</translation>
    </message>
    <message>
        <source>Groin and inguinal crease: pinprick</source>
        <translation>Leiste und Leistenbeuge: Spitzreiz</translation>
    </message>
    <message>
        <source>Upper outer thigh, front: pinprick</source>
        <translation>Oberschenkel vorn, oben außen: Spitzreiz</translation>
    </message>
    <message>
        <source>Upper inner thigh: pinprick</source>
        <translation>Oberschenkel oben innen: Spitzreiz</translation>
    </message>
    <message>
        <source>Middle of the front thigh: pinprick</source>
        <translation>Mitte des Oberschenkels vorn: Spitzreiz</translation>
    </message>
    <message>
        <source>Lower inner thigh and inner knee: pinprick</source>
        <translation>Oberschenkel unten innen und Knie innen: Spitzreiz</translation>
    </message>
    <message>
        <source>Outer thigh: pinprick</source>
        <translation>Oberschenkel außen: Spitzreiz</translation>
    </message>
    <message>
        <source>Front of the knee: pinprick</source>
        <translation>Knie vorn: Spitzreiz</translation>
    </message>
    <message>
        <source>Inner shin: pinprick</source>
        <translation>Unterschenkel vorn innen: Spitzreiz</translation>
    </message>
    <message>
        <source>Inner ankle: pinprick</source>
        <translation>Innenknöchel: Spitzreiz</translation>
    </message>
    <message>
        <source>Outer shin: pinprick</source>
        <translation>Unterschenkel vorn außen: Spitzreiz</translation>
    </message>
    <message>
        <source>Top of the foot, inner part: pinprick</source>
        <translation>Fußrücken innen: Spitzreiz</translation>
    </message>
    <message>
        <source>Top of the foot, centre: pinprick</source>
        <translation>Fußrücken Mitte: Spitzreiz</translation>
    </message>
    <message>
        <source>Top of the foot, outer edge: pinprick</source>
        <translation>Fußrücken Außenrand: Spitzreiz</translation>
    </message>
    <message>
        <source>First web space: pinprick</source>
        <translation>Erster Zehenzwischenraum: Spitzreiz</translation>
    </message>
    <message>
        <source>Great toe: pinprick</source>
        <translation>Großzehe: Spitzreiz</translation>
    </message>
    <message>
        <source>Second to fourth toes: pinprick</source>
        <translation>Zweite bis vierte Zehe: Spitzreiz</translation>
    </message>
    <message>
        <source>Little toe: pinprick</source>
        <translation>Kleinzehe: Spitzreiz</translation>
    </message>
    <message>
        <source>Outer ankle: pinprick</source>
        <translation>Außenknöchel: Spitzreiz</translation>
    </message>
    <message>
        <source>Heel from behind, outer side: pinprick</source>
        <translation>Ferse von hinten, außen: Spitzreiz</translation>
    </message>
    <message>
        <source>Inner calf: pinprick</source>
        <translation>Wade innen: Spitzreiz</translation>
    </message>
    <message>
        <source>Back of the calf: pinprick</source>
        <translation>Wade hinten: Spitzreiz</translation>
    </message>
    <message>
        <source>Outer calf: pinprick</source>
        <translation>Wade außen: Spitzreiz</translation>
    </message>
    <message>
        <source>Hollow behind the knee: pinprick</source>
        <translation>Kniekehle: Spitzreiz</translation>
    </message>
    <message>
        <source>Back of the thigh: pinprick</source>
        <translation>Oberschenkel hinten: Spitzreiz</translation>
    </message>
    <message>
        <source>Upper buttock: pinprick</source>
        <translation>Gesäß oben: Spitzreiz</translation>
    </message>
    <message>
        <source>Lower buttock and fold: pinprick</source>
        <translation>Gesäß unten und Falte: Spitzreiz</translation>
    </message>
    <message>
        <source>Low back: pinprick</source>
        <translation>Unterer Rücken: Spitzreiz</translation>
    </message>
    <message>
        <source>Sole, inner part: pinprick</source>
        <translation>Fußsohle innen: Spitzreiz</translation>
    </message>
    <message>
        <source>Sole, outer part: pinprick</source>
        <translation>Fußsohle außen: Spitzreiz</translation>
    </message>
    <message>
        <source>Heel pad: pinprick</source>
        <translation>Fersenpolster: Spitzreiz</translation>
    </message>
    <message>
        <source>Around the genitals: pinprick</source>
        <translation>Um das Genitale: Spitzreiz</translation>
    </message>
    <message>
        <source>Around the anus: pinprick</source>
        <translation>Um den After: Spitzreiz</translation>
    </message>
    <message>
        <source>Inner buttock, saddle area: pinprick</source>
        <translation>Gesäß innen, Reithose: Spitzreiz</translation>
    </message>
    <message>
        <source>Groin and inguinal crease: marked by the patient</source>
        <translation>Leiste und Leistenbeuge: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Upper outer thigh, front: marked by the patient</source>
        <translation>Oberschenkel vorn, oben außen: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Upper inner thigh: marked by the patient</source>
        <translation>Oberschenkel oben innen: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Middle of the front thigh: marked by the patient</source>
        <translation>Mitte des Oberschenkels vorn: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Lower inner thigh and inner knee: marked by the patient</source>
        <translation>Oberschenkel unten innen und Knie innen: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Outer thigh: marked by the patient</source>
        <translation>Oberschenkel außen: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Front of the knee: marked by the patient</source>
        <translation>Knie vorn: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Inner shin: marked by the patient</source>
        <translation>Unterschenkel vorn innen: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Inner ankle: marked by the patient</source>
        <translation>Innenknöchel: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Outer shin: marked by the patient</source>
        <translation>Unterschenkel vorn außen: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Top of the foot, inner part: marked by the patient</source>
        <translation>Fußrücken innen: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Top of the foot, centre: marked by the patient</source>
        <translation>Fußrücken Mitte: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Top of the foot, outer edge: marked by the patient</source>
        <translation>Fußrücken Außenrand: vom Patienten markiert</translation>
    </message>
    <message>
        <source>First web space: marked by the patient</source>
        <translation>Erster Zehenzwischenraum: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Great toe: marked by the patient</source>
        <translation>Großzehe: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Second to fourth toes: marked by the patient</source>
        <translation>Zweite bis vierte Zehe: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Little toe: marked by the patient</source>
        <translation>Kleinzehe: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Outer ankle: marked by the patient</source>
        <translation>Außenknöchel: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Heel from behind, outer side: marked by the patient</source>
        <translation>Ferse von hinten, außen: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Inner calf: marked by the patient</source>
        <translation>Wade innen: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Back of the calf: marked by the patient</source>
        <translation>Wade hinten: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Outer calf: marked by the patient</source>
        <translation>Wade außen: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Hollow behind the knee: marked by the patient</source>
        <translation>Kniekehle: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Back of the thigh: marked by the patient</source>
        <translation>Oberschenkel hinten: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Upper buttock: marked by the patient</source>
        <translation>Gesäß oben: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Lower buttock and fold: marked by the patient</source>
        <translation>Gesäß unten und Falte: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Low back: marked by the patient</source>
        <translation>Unterer Rücken: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Sole, inner part: marked by the patient</source>
        <translation>Fußsohle innen: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Sole, outer part: marked by the patient</source>
        <translation>Fußsohle außen: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Heel pad: marked by the patient</source>
        <translation>Fersenpolster: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Around the genitals: marked by the patient</source>
        <translation>Um das Genitale: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Around the anus: marked by the patient</source>
        <translation>Um den After: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Inner buttock, saddle area: marked by the patient</source>
        <translation>Gesäß innen, Reithose: vom Patienten markiert</translation>
    </message>
    <message>
        <source>Straight leg raise, seated</source>
        <translation>Lasègue im Sitzen</translation>
    </message>
    <message>
        <source>Straight leg raise, seated: hip-knee angle at onset</source>
        <translation>Lasègue im Sitzen: Hüft-Knie-Winkel bei Beginn</translation>
    </message>
    <message>
        <source>Slump</source>
        <translation>Slump-Test</translation>
    </message>
    <message>
        <source>Straight leg raise, supine</source>
        <translation>Lasègue im Liegen</translation>
    </message>
    <message>
        <source>Straight leg raise, supine: angle at onset</source>
        <translation>Lasègue im Liegen: Winkel bei Beginn</translation>
    </message>
    <message>
        <source>Worse on dorsiflexing the foot</source>
        <translation>Stärker bei Fußhebung (Bragard)</translation>
    </message>
    <message>
        <source>Raising this leg brings on pain in the other leg</source>
        <translation>Heben dieses Beins schmerzt im anderen (gekreuzter Lasègue)</translation>
    </message>
    <message>
        <source>Bowstring</source>
        <translation>Bowstring-Zeichen</translation>
    </message>
    <message>
        <source>Femoral nerve stretch, prone</source>
        <translation>Femoralisdehnung (umgekehrter Lasègue)</translation>
    </message>
    <message>
        <source>Leans back to escape when the seated leg is raised</source>
        <translation>Weicht beim Heben des Beins im Sitzen nach hinten aus</translation>
    </message>
    <message>
        <source>Hip internal rotation</source>
        <translation>Innenrotation der Hüfte</translation>
    </message>
    <message>
        <source>Hip external rotation</source>
        <translation>Außenrotation der Hüfte</translation>
    </message>
    <message>
        <source>Hip flexion range</source>
        <translation>Beugeumfang der Hüfte</translation>
    </message>
    <message>
        <source>Groin or familiar pain on hip rotation</source>
        <translation>Leisten- oder bekannter Schmerz bei Hüftrotation</translation>
    </message>
    <message>
        <source>Flexion-abduction-external rotation</source>
        <translation>Flexion-Abduktion-Außenrotation (Patrick)</translation>
    </message>
    <message>
        <source>Flexion-adduction-internal rotation</source>
        <translation>Flexion-Adduktion-Innenrotation</translation>
    </message>
    <message>
        <source>Log roll</source>
        <translation>Rolltest des Beins</translation>
    </message>
    <message>
        <source>Distraction</source>
        <translation>Distraktion</translation>
    </message>
    <message>
        <source>Compression</source>
        <translation>Kompression</translation>
    </message>
    <message>
        <source>Thigh thrust</source>
        <translation>Oberschenkelschub</translation>
    </message>
    <message>
        <source>Pelvic torsion</source>
        <translation>Beckentorsion</translation>
    </message>
    <message>
        <source>Sacral thrust</source>
        <translation>Sakrumschub</translation>
    </message>
    <message>
        <source>True leg length</source>
        <translation>Wahre Beinlänge</translation>
    </message>
    <message>
        <source>Thigh girth</source>
        <translation>Oberschenkelumfang</translation>
    </message>
    <message>
        <source>Calf girth</source>
        <translation>Wadenumfang</translation>
    </message>
    <message>
        <source>Pulsatile abdominal mass</source>
        <translation>Pulsierende Resistenz im Bauch</translation>
    </message>
    <message>
        <source>Anal tone</source>
        <translation>Analtonus</translation>
    </message>
    <message>
        <source>Voluntary anal contraction</source>
        <translation>Willkürliche Analkontraktion</translation>
    </message>
    <message>
        <source>Present</source>
        <translation>Vorhanden</translation>
    </message>
    <message>
        <source>Weak</source>
        <translation>Schwach</translation>
    </message>
    <message>
        <source>Anal skin reflex</source>
        <translation>Analreflex</translation>
    </message>
    <message>
        <source>Sensory level on the trunk</source>
        <translation>Sensibles Niveau am Rumpf</translation>
    </message>
    <message>
        <source>Arm weakness, brisk arm reflexes or hand clumsiness</source>
        <translation>Armschwäche, lebhafte Armreflexe oder ungeschickte Hände</translation>
    </message>
    <message>
        <source>pain</source>
        <translation>Schmerz</translation>
    </message>
    <message>
        <source>cast or brace</source>
        <translation>Gips oder Schiene</translation>
    </message>
    <message>
        <source>amputation</source>
        <translation>Amputation</translation>
    </message>
    <message>
        <source>cooperation</source>
        <translation>Mitarbeit</translation>
    </message>
    <message>
        <source>declined</source>
        <translation>abgelehnt</translation>
    </message>
    <message>
        <source>other</source>
        <translation>anderes</translation>
    </message>
    <message>
        <source>not testable</source>
        <translation>nicht prüfbar</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation>Wochen</translation>
    </message>
    <message>
        <source>No root or nerve lesion</source>
        <translation>Keine Wurzel- oder Nervenläsion</translation>
    </message>
    <message>
        <source>Arterial disease of the leg</source>
        <translation>Arterielle Verschlusskrankheit des Beins</translation>
    </message>
    <message>
        <source>Greater trochanter</source>
        <translation>Trochanter major</translation>
    </message>
    <message>
        <source>Hip joint</source>
        <translation>Hüftgelenk</translation>
    </message>
    <message>
        <source>Pain referred into the leg from back, joint or muscle</source>
        <translation>Ins Bein übertragener Schmerz aus Rücken, Gelenk oder Muskel</translation>
    </message>
    <message>
        <source>L1 root</source>
        <translation>Wurzel L1</translation>
    </message>
    <message>
        <source>L2 root</source>
        <translation>Wurzel L2</translation>
    </message>
    <message>
        <source>L3 root</source>
        <translation>Wurzel L3</translation>
    </message>
    <message>
        <source>L4 root</source>
        <translation>Wurzel L4</translation>
    </message>
    <message>
        <source>L5 root</source>
        <translation>Wurzel L5</translation>
    </message>
    <message>
        <source>S1 root</source>
        <translation>Wurzel S1</translation>
    </message>
    <message>
        <source>S2 to S4 roots</source>
        <translation>Wurzeln S2 bis S4</translation>
    </message>
    <message>
        <source>L2 and L3 roots</source>
        <translation>Wurzeln L2 und L3</translation>
    </message>
    <message>
        <source>L3 and L4 roots</source>
        <translation>Wurzeln L3 und L4</translation>
    </message>
    <message>
        <source>L4 and L5 roots</source>
        <translation>Wurzeln L4 und L5</translation>
    </message>
    <message>
        <source>L5 and S1 roots</source>
        <translation>Wurzeln L5 und S1</translation>
    </message>
    <message>
        <source>Femoral nerve</source>
        <translation>Nervus femoralis</translation>
    </message>
    <message>
        <source>Saphenous nerve</source>
        <translation>Nervus saphenus</translation>
    </message>
    <message>
        <source>Obturator nerve</source>
        <translation>Nervus obturatorius</translation>
    </message>
    <message>
        <source>Lateral femoral cutaneous nerve</source>
        <translation>Nervus cutaneus femoris lateralis</translation>
    </message>
    <message>
        <source>Sciatic nerve</source>
        <translation>Nervus ischiadicus</translation>
    </message>
    <message>
        <source>Common fibular nerve</source>
        <translation>Nervus fibularis communis</translation>
    </message>
    <message>
        <source>Deep fibular nerve</source>
        <translation>Nervus fibularis profundus</translation>
    </message>
    <message>
        <source>Tibial nerve at the knee or in the calf</source>
        <translation>Nervus tibialis am Knie oder in der Wade</translation>
    </message>
    <message>
        <source>Tibial nerve at the ankle</source>
        <translation>Nervus tibialis am Knöchel</translation>
    </message>
    <message>
        <source>Sural nerve</source>
        <translation>Nervus suralis</translation>
    </message>
    <message>
        <source>Pudendal nerve</source>
        <translation>Nervus pudendus</translation>
    </message>
    <message>
        <source>Lumbar plexus</source>
        <translation>Plexus lumbalis</translation>
    </message>
    <message>
        <source>Lumbosacral plexus</source>
        <translation>Plexus lumbosacralis</translation>
    </message>
    <message>
        <source>Cauda equina</source>
        <translation>Cauda equina</translation>
    </message>
    <message>
        <source>Conus medullaris</source>
        <translation>Conus medullaris</translation>
    </message>
    <message>
        <source>Upper motor neuron</source>
        <translation>Erstes Motoneuron</translation>
    </message>
    <message>
        <source>Upper motor neuron, brain</source>
        <translation>Erstes Motoneuron, Gehirn</translation>
    </message>
    <message>
        <source>Upper motor neuron, back of the cord</source>
        <translation>Erstes Motoneuron, Hinterstränge</translation>
    </message>
    <message>
        <source>Upper motor neuron, half of the cord</source>
        <translation>Erstes Motoneuron, halbes Rückenmark</translation>
    </message>
    <message>
        <source>Length-dependent polyneuropathy</source>
        <translation>Längenabhängige Polyneuropathie</translation>
    </message>
    <message>
        <source>Acute or subacute polyradiculoneuropathy</source>
        <translation>Akute oder subakute Polyradikuloneuropathie</translation>
    </message>
    <message>
        <source>Several roots on both sides</source>
        <translation>Mehrere Wurzeln beiderseits</translation>
    </message>
    <message>
        <source>Weakness with signs of the arm, face or speech that came within days: possible stroke.</source>
        <translation>Schwäche mit Zeichen an Arm, Gesicht oder Sprache binnen Tagen: Schlaganfall möglich.</translation>
    </message>
    <message>
        <source>Usually the emergency service is called at once; the lumbar spine can wait; follow the local pathway.</source>
        <translation>Üblich: sofort den Rettungsdienst rufen; die Lendenwirbelsäule kann warten; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Cord signs with a change of bladder, bowel or saddle: image the whole spine, cord first.</source>
        <translation>Rückenmarkszeichen mit Veränderung von Blase, Darm oder Reithose: ganze Wirbelsäule abbilden, zuerst das Rückenmark.</translation>
    </message>
    <message>
        <source>Usually same-day emergency assessment with imaging of the whole spine, since a lumbar image alone can miss the lesion; follow the local pathway.</source>
        <translation>Üblich: Notfallabklärung am selben Tag mit Bildgebung der ganzen Wirbelsäule, da ein Lendenbild allein die Läsion verfehlen kann; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Cord or brain signs that are progressing or came within days.</source>
        <translation>Rückenmarks- oder Hirnzeichen, die zunehmen oder binnen Tagen kamen.</translation>
    </message>
    <message>
        <source>Usually same-day emergency assessment with imaging above the lumbar spine; follow the local pathway.</source>
        <translation>Üblich: Notfallabklärung am selben Tag mit Bildgebung oberhalb der Lendenwirbelsäule; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Signs of the cord or brain: the lumbar roots do not explain them.</source>
        <translation>Zeichen von Rückenmark oder Gehirn: die Lendenwurzeln erklären sie nicht.</translation>
    </message>
    <message>
        <source>Usually urgent neurological assessment with imaging above the lumbar spine; follow the local pathway.</source>
        <translation>Üblich: dringende neurologische Abklärung mit Bildgebung oberhalb der Lendenwirbelsäule; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Brisk reflexes or unsteadiness alone: weak evidence.</source>
        <translation>Nur lebhafte Reflexe oder Unsicherheit: schwacher Hinweis.</translation>
    </message>
    <message>
        <source>Usually plantar response, clonus, tone and the arms are checked at this visit; follow the local pathway.</source>
        <translation>Üblich: Fußsohlenreflex, Klonus, Tonus und Arme bei diesem Besuch prüfen; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Signs that the nerves to the bladder, bowel and saddle may be compressed.</source>
        <translation>Zeichen einer möglichen Kompression der Nerven zu Blase, Darm und Reithose.</translation>
    </message>
    <message>
        <source>Usually same-day emergency assessment and imaging by the local cauda equina pathway, without waiting for a rectal examination or a bladder scan; follow the local pathway.</source>
        <translation>Üblich: Notfallabklärung und Bildgebung am selben Tag nach dem örtlichen Cauda-equina-Vorgehen, ohne auf rektale Untersuchung oder Blasenultraschall zu warten; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Both legs or a related function are affected: ask about bladder, bowel, saddle feeling and sexual function, and test the saddle.</source>
        <translation>Beide Beine oder eine verwandte Funktion betroffen: nach Blase, Darm, Gefühl der Reithose und Sexualfunktion fragen und die Reithose prüfen.</translation>
    </message>
    <message>
        <source>Usually the bladder, bowel and saddle questions are completed now, anything new is discussed the same day, and written safety-net advice is given; follow the local pathway.</source>
        <translation>Üblich: Fragen zu Blase, Darm und Reithose jetzt vervollständigen, Neues am selben Tag besprechen und schriftliche Warnhinweise mitgeben; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>A bladder, bowel or saddle finding that is long-standing or weak on its own.</source>
        <translation>Ein Befund an Blase, Darm oder Reithose, der seit langem besteht oder für sich schwach ist.</translation>
    </message>
    <message>
        <source>Usually it is asked again at every visit what has changed, and written safety-net advice is given; follow the local pathway.</source>
        <translation>Üblich: bei jedem Besuch erneut nach Veränderungen fragen und schriftliche Warnhinweise mitgeben; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Marked weakness in both legs.</source>
        <translation>Ausgeprägte Schwäche beider Beine.</translation>
    </message>
    <message>
        <source>Usually same-day emergency assessment; follow the local pathway.</source>
        <translation>Üblich: Notfallabklärung am selben Tag; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>A key movement cannot overcome more than gravity.</source>
        <translation>Eine Kennbewegung überwindet nicht mehr als die Schwerkraft.</translation>
    </message>
    <message>
        <source>Usually same-day telephone discussion with the spine or neurology service, with the day it began; follow the local pathway.</source>
        <translation>Üblich: am selben Tag telefonische Rücksprache mit Wirbelsäulen- oder Neurologiedienst, mit dem Tag des Beginns; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Walking on the heel or the toes fails, and the movement is weak by hand or was not tested by hand.</source>
        <translation>Fersen- oder Zehengang misslingt, und die Bewegung ist von Hand schwach oder nicht von Hand geprüft.</translation>
    </message>
    <message>
        <source>Usually the movement is tested by hand now, then a same-day telephone discussion with the spine or neurology service, with the day it began; follow the local pathway.</source>
        <translation>Üblich: Bewegung jetzt von Hand prüfen, dann am selben Tag telefonische Rücksprache mit Wirbelsäulen- oder Neurologiedienst, mit dem Tag des Beginns; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Marked weakness that pain may explain in part.</source>
        <translation>Ausgeprägte Schwäche, die Schmerz teilweise erklären kann.</translation>
    </message>
    <message>
        <source>Usually strength is tested again after pain relief, and a weakness that stays is discussed the same day; follow the local pathway.</source>
        <translation>Üblich: Kraft nach Schmerzlinderung erneut prüfen und bleibende Schwäche am selben Tag besprechen; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Marked weakness said to be older than six weeks, not seen before at this clinic.</source>
        <translation>Ausgeprägte Schwäche, angeblich älter als sechs Wochen, in dieser Praxis noch nicht gesehen.</translation>
    </message>
    <message>
        <source>Usually a discussion within days, with the course since it began; follow the local pathway.</source>
        <translation>Üblich: Rücksprache binnen Tagen, mit dem Verlauf seit Beginn; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>A known marked weakness, a weak toe alone or a failed walking test alone.</source>
        <translation>Eine bekannte ausgeprägte Schwäche, nur eine schwache Zehe oder nur ein misslungener Gangtest.</translation>
    </message>
    <message>
        <source>Usually the movement is tested by hand and its grade compared with the last visit; follow the local pathway.</source>
        <translation>Üblich: Bewegung von Hand prüfen und den Grad mit dem letzten Besuch vergleichen; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Weakness of both legs that is getting worse.</source>
        <translation>Zunehmende Schwäche beider Beine.</translation>
    </message>
    <message>
        <source>Weakness is increasing.</source>
        <translation>Die Schwäche nimmt zu.</translation>
    </message>
    <message>
        <source>Usually same-day discussion with the spine or neurology service; follow the local pathway.</source>
        <translation>Üblich: am selben Tag Rücksprache mit Wirbelsäulen- oder Neurologiedienst; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>One grade lower than at the last visit, or a growing weakness that is felt but not found.</source>
        <translation>Ein Grad weniger als beim letzten Besuch oder eine zunehmende, gefühlte, aber nicht gefundene Schwäche.</translation>
    </message>
    <message>
        <source>Usually the test is repeated now by the same examiner, and a fall that stays is discussed the same day; follow the local pathway.</source>
        <translation>Üblich: Prüfung jetzt durch dieselbe Person wiederholen und einen bleibenden Abfall am selben Tag besprechen; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Weakness of both legs that came within weeks, with lost reflexes or trouble breathing or swallowing: possible acute polyneuropathy, which can reach breathing.</source>
        <translation>Schwäche beider Beine binnen Wochen mit erloschenen Reflexen oder Atem- oder Schluckstörung: akute Polyneuropathie möglich, sie kann die Atmung erreichen.</translation>
    </message>
    <message>
        <source>Usually same-day emergency assessment with breathing and heart rhythm watched; follow the local pathway.</source>
        <translation>Üblich: Notfallabklärung am selben Tag unter Überwachung von Atmung und Herzrhythmus; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Weakness of both legs with lost knee and ankle reflexes, or leg weakness with trouble breathing or swallowing.</source>
        <translation>Schwäche beider Beine mit erloschenen Patellar- und Achillessehnenreflexen oder Beinschwäche mit Atem- oder Schluckstörung.</translation>
    </message>
    <message>
        <source>Usually same-day neurological discussion, with how fast it came and whether breathing and swallowing are free; follow the local pathway.</source>
        <translation>Üblich: neurologische Rücksprache am selben Tag, mit Tempo des Beginns und ob Atmung und Schlucken frei sind; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Long-known weakness with lost reflexes, or trouble breathing or swallowing without leg weakness.</source>
        <translation>Seit langem bekannte Schwäche mit erloschenen Reflexen oder Atem- oder Schluckstörung ohne Beinschwäche.</translation>
    </message>
    <message>
        <source>Usually the known cause is looked up and a change since then is asked for; follow the local pathway.</source>
        <translation>Üblich: bekannte Ursache nachsehen und nach Veränderung seither fragen; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>New weakness within days under anticoagulants or after a spinal procedure: possible bleeding into the spine or the hip flexor.</source>
        <translation>Neue Schwäche binnen Tagen unter Gerinnungshemmern oder nach Eingriff an der Wirbelsäule: Blutung in Wirbelkanal oder Hüftbeuger möglich.</translation>
    </message>
    <message>
        <source>Usually same-day emergency assessment with imaging, and the clotting treatment named in the call; follow the local pathway.</source>
        <translation>Üblich: Notfallabklärung am selben Tag mit Bildgebung; die Gerinnungsbehandlung beim Anruf nennen; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Weak hip flexion or knee extension under anticoagulants: bleeding into the hip flexor is possible.</source>
        <translation>Schwache Hüftbeugung oder Kniestreckung unter Gerinnungshemmern: Blutung in den Hüftbeuger möglich.</translation>
    </message>
    <message>
        <source>Usually a same-day discussion, with how fast it came, groin pain and the blood count; follow the local pathway.</source>
        <translation>Üblich: Rücksprache am selben Tag, mit Tempo des Beginns, Leistenschmerz und Blutbild; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Fast severe pain under anticoagulants or after a spinal procedure.</source>
        <translation>Rasch einsetzender starker Schmerz unter Gerinnungshemmern oder nach Eingriff an der Wirbelsäule.</translation>
    </message>
    <message>
        <source>Usually strength and saddle are tested at this visit, with advice to return at once with any weakness; follow the local pathway.</source>
        <translation>Üblich: Kraft und Reithose bei diesem Besuch prüfen und raten, bei jeder Schwäche sofort wiederzukommen; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Cancer with weak legs, cord signs, failing gait or a bladder, bowel or saddle change: possible compression of the cord by a tumor.</source>
        <translation>Krebs mit schwachen Beinen, Rückenmarkszeichen, Gangstörung oder Veränderung von Blase, Darm oder Reithose: Kompression des Rückenmarks durch einen Tumor möglich.</translation>
    </message>
    <message>
        <source>Usually same-day contact with the cord compression service, with imaging of the whole spine within a day; follow the local pathway.</source>
        <translation>Üblich: am selben Tag Kontakt mit dem für Rückenmarkskompression zuständigen Dienst, Bildgebung der ganzen Wirbelsäule binnen eines Tages; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Cancer now or within ten years, or weight loss with another pointer.</source>
        <translation>Krebs jetzt oder in den letzten zehn Jahren, oder Gewichtsverlust mit weiterem Hinweis.</translation>
    </message>
    <message>
        <source>Usually early imaging and blood tests are considered; follow the local pathway.</source>
        <translation>Üblich: frühe Bildgebung und Blutuntersuchung erwägen; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Weak pointers to serious disease; most people with them have none.</source>
        <translation>Schwache Hinweise auf ernste Erkrankung; die meisten mit ihnen haben keine.</translation>
    </message>
    <message>
        <source>Usually a review at the next visit if it is not improving; follow the local pathway.</source>
        <translation>Üblich: Kontrolle beim nächsten Besuch, wenn es nicht besser wird; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Fever or a setting for infection with new weakness, or fever with low pressure or a racing pulse: possible epidural abscess or sepsis.</source>
        <translation>Fieber oder Infektionsrisiko mit neuer Schwäche, oder Fieber mit niedrigem Blutdruck oder rasendem Puls: epiduraler Abszess oder Sepsis möglich.</translation>
    </message>
    <message>
        <source>Usually same-day emergency assessment with imaging of the whole spine and blood cultures; follow the local pathway.</source>
        <translation>Üblich: Notfallabklärung am selben Tag mit Bildgebung der ganzen Wirbelsäule und Blutkulturen; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Fever with a hip that hurts on rotation: possible infection of the joint or of the hip flexor.</source>
        <translation>Fieber mit bei Rotation schmerzender Hüfte: Infektion des Gelenks oder des Hüftbeugers möglich.</translation>
    </message>
    <message>
        <source>Usually the joint is assessed the same day, with blood tests; follow the local pathway.</source>
        <translation>Üblich: Gelenk am selben Tag abklären, mit Blutuntersuchung; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Possible infection of the spine or the muscles beside it.</source>
        <translation>Infektion der Wirbelsäule oder der Muskeln daneben möglich.</translation>
    </message>
    <message>
        <source>Usually same-day blood tests and discussion; follow the local pathway.</source>
        <translation>Üblich: Blutuntersuchung und Rücksprache am selben Tag; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>A setting in which spinal infection is likelier; no fever does not exclude it.</source>
        <translation>Umstände, unter denen eine Wirbelsäuleninfektion wahrscheinlicher ist; fehlendes Fieber schließt sie nicht aus.</translation>
    </message>
    <message>
        <source>Usually fever is asked for again, with a low threshold for blood tests; follow the local pathway.</source>
        <translation>Üblich: erneut nach Fieber fragen, Blutuntersuchung großzügig veranlassen; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>High-energy injury with a deficit: possible unstable fracture.</source>
        <translation>Hochenergetische Verletzung mit Ausfall: instabile Fraktur möglich.</translation>
    </message>
    <message>
        <source>Usually the spine is kept still and the emergency service called; follow the local pathway.</source>
        <translation>Üblich: Wirbelsäule ruhigstellen und Rettungsdienst rufen; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>A strong pointer to a spinal fracture: high energy, a bruise over the spine, a stiffened spine that was hurt, or three pointers together.</source>
        <translation>Starker Hinweis auf eine Wirbelfraktur: hohe Energie, Bluterguss über der Wirbelsäule, verletzte versteifte Wirbelsäule oder drei Hinweise zusammen.</translation>
    </message>
    <message>
        <source>Usually imaging the same day; follow the local pathway.</source>
        <translation>Üblich: Bildgebung am selben Tag; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Several pointers to a spinal fracture (house rule near the published count).</source>
        <translation>Mehrere Hinweise auf eine Wirbelfraktur (Hausregel nahe der veröffentlichten Zählung).</translation>
    </message>
    <message>
        <source>Usually imaging is considered within days; follow the local pathway.</source>
        <translation>Üblich: Bildgebung binnen Tagen erwägen; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>One pointer to fracture.</source>
        <translation>Ein Hinweis auf eine Fraktur.</translation>
    </message>
    <message>
        <source>Usually the spine is percussed and imaging considered if pain persists; follow the local pathway.</source>
        <translation>Üblich: Wirbelsäule beklopfen und bei anhaltendem Schmerz Bildgebung erwägen; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Possible leaking aortic aneurysm.</source>
        <translation>Undichtes Aortenaneurysma möglich.</translation>
    </message>
    <message>
        <source>Usually the emergency service is called at once, whether or not a mass is felt; follow the local pathway.</source>
        <translation>Üblich: sofort den Rettungsdienst rufen, ob eine Resistenz tastbar ist oder nicht; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Wide abdominal pulsation, or new back pain with a known aneurysm.</source>
        <translation>Breite Pulsation im Bauch oder neuer Rückenschmerz bei bekanntem Aneurysma.</translation>
    </message>
    <message>
        <source>Usually same-day ultrasound or vascular discussion; follow the local pathway.</source>
        <translation>Üblich: Ultraschall oder gefäßchirurgische Rücksprache am selben Tag; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>A known aneurysm without new pain.</source>
        <translation>Bekanntes Aneurysma ohne neuen Schmerz.</translation>
    </message>
    <message>
        <source>Usually it is asked whether surveillance is up to date; follow the local pathway.</source>
        <translation>Üblich: fragen, ob die Kontrollen aktuell sind; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>A leg that may be losing its blood supply.</source>
        <translation>Ein Bein, das seine Durchblutung verlieren könnte.</translation>
    </message>
    <message>
        <source>Usually emergency vascular assessment now; follow the local pathway.</source>
        <translation>Üblich: sofortige gefäßchirurgische Notfallabklärung; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Pulses or circulation of a leg need a second look now: feel the other pulses, compare color and warmth.</source>
        <translation>Pulse oder Durchblutung eines Beins jetzt erneut prüfen: andere Pulse tasten, Farbe und Wärme vergleichen.</translation>
    </message>
    <message>
        <source>Usually the pulses are sought with Doppler at this visit and vascular advice taken the same day; follow the local pathway.</source>
        <translation>Üblich: Pulse bei diesem Besuch mit Doppler suchen und am selben Tag gefäßmedizinischen Rat holen; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>A pulse could not be felt, or the ankle pressure is low.</source>
        <translation>Ein Puls war nicht tastbar, oder der Knöcheldruck ist niedrig.</translation>
    </message>
    <message>
        <source>Usually the ankle-brachial index is measured, and color and warmth compared; follow the local pathway.</source>
        <translation>Üblich: Knöchel-Arm-Index messen, Farbe und Wärme vergleichen; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>A new painful leg with a swollen calf: think of a vein clot.</source>
        <translation>Neu schmerzendes Bein mit geschwollener Wade: an Venenthrombose denken.</translation>
    </message>
    <message>
        <source>Usually a same-day clot score and ultrasound are considered; follow the local pathway.</source>
        <translation>Üblich: Thromboserisiko-Punktzahl und Ultraschall am selben Tag erwägen; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>One calf is swollen or clearly thicker than the other.</source>
        <translation>Eine Wade ist geschwollen oder deutlich dicker als die andere.</translation>
    </message>
    <message>
        <source>Usually a vein clot is considered beside wasting of the other calf; follow the local pathway.</source>
        <translation>Üblich: neben Atrophie der anderen Wade eine Venenthrombose erwägen; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Blistering rash with weakness on its side, bladder change or low immunity.</source>
        <translation>Ausschlag mit Bläschen und Schwäche auf seiner Seite, Blasenveränderung oder Abwehrschwäche.</translation>
    </message>
    <message>
        <source>Usually a prompt decision on antiviral treatment and a medical review; follow the local pathway.</source>
        <translation>Üblich: rasche Entscheidung über antivirale Behandlung und ärztliche Kontrolle; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>A recent blistering rash: shingles can cause root pain, numbness and weakness.</source>
        <translation>Kürzlicher Ausschlag mit Bläschen: Gürtelrose kann Wurzelschmerz, Taubheit und Schwäche machen.</translation>
    </message>
    <message>
        <source>Usually antiviral treatment is considered, most useful within days of the rash; follow the local pathway.</source>
        <translation>Üblich: antivirale Behandlung erwägen, am nützlichsten binnen Tagen nach dem Ausschlag; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>The pain behaves like inflammatory back pain.</source>
        <translation>Der Schmerz verhält sich wie entzündlicher Rückenschmerz.</translation>
    </message>
    <message>
        <source>Usually referral to rheumatology is considered when it has lasted three months; follow the local pathway.</source>
        <translation>Üblich: Überweisung zur Rheumatologie erwägen, wenn er drei Monate dauert; örtlichem Vorgehen folgen.</translation>
    </message>
    <message>
        <source>Axial spondyloarthritis</source>
        <translation>Axiale Spondyloarthritis</translation>
    </message>
    <message>
        <source>Lumbar stenosis</source>
        <translation>Lumbale Spinalkanalstenose</translation>
    </message>
    <message>
        <source>Heel walking and seated dorsiflexion disagree: repeat both; pain and balance can explain it.</source>
        <translation>Fersengang und Fußhebung im Sitzen widersprechen sich: beides wiederholen; Schmerz und Gleichgewicht können es erklären.</translation>
    </message>
    <message>
        <source>Toe walking or heel raises are better than the seated plantarflexion grade: repeat. The reverse is expected, since body weight shows mild weakness.</source>
        <translation>Zehengang oder Fersenhebung sind besser als der Kraftgrad der Fußsenkung im Sitzen: wiederholen. Das Gegenteil wäre zu erwarten, da das Körpergewicht leichte Schwäche zeigt.</translation>
    </message>
    <message>
        <source>Rising on one leg is better than the seated knee extension grade: repeat.</source>
        <translation>Aufstehen auf einem Bein ist besser als der Kraftgrad der Kniestreckung im Sitzen: wiederholen.</translation>
    </message>
    <message>
        <source>The two leg raises differ by 40 degrees or more: repeat both and record both angles. The seated test found 41 percent and the supine test 67 percent of proven root compressions, so a negative seated test alone means little.</source>
        <translation>Die beiden Lasègue-Prüfungen unterscheiden sich um 40 Grad oder mehr: beide wiederholen und beide Winkel erfassen. Im Sitzen wurden 41 Prozent, im Liegen 67 Prozent der gesicherten Wurzelkompressionen gefunden; ein negativer Test im Sitzen allein bedeutet wenig.</translation>
    </message>
    <message>
        <source>Strength gives way on this side: grades there count less; pain is a common cause.</source>
        <translation>Die Kraft gibt auf dieser Seite ruckartig nach: Grade dort zählen weniger; Schmerz ist eine häufige Ursache.</translation>
    </message>
    <message>
        <source>Touch absent with pinprick kept in several places: large fibres or the dorsal columns can do this, so check vibration and position, then repeat with eyes closed.</source>
        <translation>Berührung fehlt bei erhaltenem Spitzreiz an mehreren Stellen: dicke Fasern oder Hinterstränge können das bewirken; Vibration und Lagesinn prüfen, dann mit geschlossenen Augen wiederholen.</translation>
    </message>
    <message>
        <source>Three or more of the five behavioral groups are present. They do not show intent and do not exclude disease; think of pain, fear and distress, and keep every red sign as it stands.</source>
        <translation>Drei oder mehr der fünf Verhaltensgruppen liegen vor. Sie zeigen keine Absicht und schließen keine Krankheit aus; an Schmerz, Angst und Not denken und jedes Warnzeichen bestehen lassen.</translation>
    </message>
    <message>
        <source>From behind, bare to the buttocks: compare waist, flank and buttock folds.</source>
        <translation>Von hinten, bis zum Gesäß entkleidet: Taillen-, Flanken- und Gesäßfalten vergleichen.</translation>
    </message>
    <message>
        <source>Folds clearly unequal.</source>
        <translation>Falten deutlich ungleich.</translation>
    </message>
    <message>
        <source>Thumbs or flat hands on top of both crests, eyes level with them, knees straight, weight on both feet.</source>
        <translation>Daumen oder flache Hände auf beide Kämme, Augen auf deren Höhe, Knie gestreckt, Gewicht auf beiden Füßen.</translation>
    </message>
    <message>
        <source>One hand clearly higher.</source>
        <translation>Eine Hand deutlich höher.</translation>
    </message>
    <message>
        <source>From behind, compare the tips of the shoulder blades and the tops of the shoulders.</source>
        <translation>Von hinten die Spitzen der Schulterblätter und die Schulterhöhen vergleichen.</translation>
    </message>
    <message>
        <source>One side clearly higher.</source>
        <translation>Eine Seite deutlich höher.</translation>
    </message>
    <message>
        <source>Slide blocks under the foot of the low side until the crests are level; read the height.</source>
        <translation>Brettchen unter den Fuß der tieferen Seite legen, bis die Kämme gleich stehen; Höhe ablesen.</translation>
    </message>
    <message>
        <source>The height of the blocks.</source>
        <translation>Die Höhe der Brettchen.</translation>
    </message>
    <message>
        <source>From behind, drop a line from the middle of the neck to the cleft.</source>
        <translation>Von hinten das Lot von der Nackenmitte zur Gesäßfalte fällen.</translation>
    </message>
    <message>
        <source>The trunk stands off the line: name the side it leans to.</source>
        <translation>Der Rumpf steht neben dem Lot: Seite nennen, zu der er neigt.</translation>
    </message>
    <message>
        <source>Compare both sides relaxed and then tensed; measure the girth where in doubt.</source>
        <translation>Beide Seiten entspannt und angespannt vergleichen; im Zweifel Umfang messen.</translation>
    </message>
    <message>
        <source>One part thinner than the other side; name the part.</source>
        <translation>Ein Teil dünner als gegenüber; Teil nennen.</translation>
    </message>
    <message>
        <source>Tape round the chest at nipple level, arms down: full breath out, then full breath in.</source>
        <translation>Maßband auf Höhe der Brustwarzen, Arme hängend: ganz aus-, dann ganz einatmen.</translation>
    </message>
    <message>
        <source>The difference of the two readings.</source>
        <translation>Die Differenz der beiden Werte.</translation>
    </message>
    <message>
        <source>Bend forward with straight knees; distance from the middle finger to the floor. Below standing level counts as minus.</source>
        <translation>Mit gestreckten Knien vorbeugen; Abstand Mittelfinger zum Boden. Unter der Standfläche zählt als minus.</translation>
    </message>
    <message>
        <source>The distance in centimeters.</source>
        <translation>Der Abstand in Zentimetern.</translation>
    </message>
    <message>
        <source>Mark the spine at the level of the pelvic dimples, 10 cm above and 5 cm below; measure between the outer marks, standing and fully bent.</source>
        <translation>Auf Höhe der Beckengrübchen, 10 cm darüber und 5 cm darunter markieren; zwischen den äußeren Marken im Stehen und ganz gebeugt messen.</translation>
    </message>
    <message>
        <source>The growth of the 15 cm.</source>
        <translation>Der Zuwachs der 15 cm.</translation>
    </message>
    <message>
        <source>Ask during the bend what hurts and where.</source>
        <translation>Während der Beugung fragen, was und wo es schmerzt.</translation>
    </message>
    <message>
        <source>Back: pain stays above the buttock crease. Leg: the familiar pain runs into the leg.</source>
        <translation>Rücken: Schmerz bleibt über der Gesäßfalte. Bein: der bekannte Schmerz zieht ins Bein.</translation>
    </message>
    <message>
        <source>Lean back with a hand for support; hold for some seconds and ask what hurts.</source>
        <translation>Mit einer Hand gestützt zurückbeugen; einige Sekunden halten und fragen, was schmerzt.</translation>
    </message>
    <message>
        <source>Back or leg, as for the forward bend.</source>
        <translation>Rücken oder Bein, wie beim Vorbeugen.</translation>
    </message>
    <message>
        <source>Palms together, bend forward; look along the back from behind.</source>
        <translation>Handflächen zusammen, vorbeugen; von hinten über den Rücken blicken.</translation>
    </message>
    <message>
        <source>One side of the ribs or loin stands higher.</source>
        <translation>Eine Seite der Rippen oder Lende steht höher.</translation>
    </message>
    <message>
        <source>Watch how the patient comes up from the bend.</source>
        <translation>Beobachten, wie der Patient aus der Beugung hochkommt.</translation>
    </message>
    <message>
        <source>Hands climbing up the thighs, a sway of the hips, or a painful catch.</source>
        <translation>Hände klettern an den Oberschenkeln hoch, Schwung der Hüften oder schmerzhaftes Stocken.</translation>
    </message>
    <message>
        <source>Both thumbs beside the spine, patient relaxed; compare at the same level.</source>
        <translation>Beide Daumen neben der Wirbelsäule, Patient entspannt; auf gleicher Höhe vergleichen.</translation>
    </message>
    <message>
        <source>Firm or hard against the other side.</source>
        <translation>Fest oder hart gegenüber der anderen Seite.</translation>
    </message>
    <message>
        <source>Press each spinous process with a thumb, from above to the sacrum.</source>
        <translation>Jeden Dornfortsatz mit dem Daumen drücken, von oben bis zum Kreuzbein.</translation>
    </message>
    <message>
        <source>Pain on firm pressure; name the height.</source>
        <translation>Schmerz bei festem Druck; Höhe nennen.</translation>
    </message>
    <message>
        <source>Tap each spinous process lightly with the closed fist.</source>
        <translation>Jeden Dornfortsatz leicht mit der Faust beklopfen.</translation>
    </message>
    <message>
        <source>Sharp pain at one place.</source>
        <translation>Scharfer Schmerz an einer Stelle.</translation>
    </message>
    <message>
        <source>Slide a finger down the spinous processes, standing.</source>
        <translation>Im Stehen einen Finger über die Dornfortsätze gleiten lassen.</translation>
    </message>
    <message>
        <source>One process clearly set back from the next.</source>
        <translation>Ein Fortsatz deutlich hinter dem nächsten.</translation>
    </message>
    <message>
        <source>Ten paces there and back, bare feet, without holding on.</source>
        <translation>Zehn Schritte hin und zurück, barfuß, ohne Festhalten.</translation>
    </message>
    <message>
        <source>The pattern that stands out most.</source>
        <translation>Das auffälligste Muster.</translation>
    </message>
    <message>
        <source>Five paces on the heels, forefeet off the floor; a hand for balance only.</source>
        <translation>Fünf Schritte auf den Fersen, Vorfüße frei; eine Hand nur fürs Gleichgewicht.</translation>
    </message>
    <message>
        <source>Difficult: the forefoot sinks. Unable: it does not leave the floor.</source>
        <translation>Erschwert: der Vorfuß sinkt. Unmöglich: er hebt sich nicht vom Boden.</translation>
    </message>
    <message>
        <source>Five paces on tiptoe; a hand for balance only.</source>
        <translation>Fünf Schritte auf Zehenspitzen; eine Hand nur fürs Gleichgewicht.</translation>
    </message>
    <message>
        <source>Difficult: the heel sinks. Unable: it does not leave the floor.</source>
        <translation>Erschwert: die Ferse sinkt. Unmöglich: sie hebt sich nicht vom Boden.</translation>
    </message>
    <message>
        <source>On one leg, knee straight, fingertips on the wall: as many full heel raises as possible.</source>
        <translation>Auf einem Bein, Knie gestreckt, Fingerspitzen an der Wand: so viele volle Fersenhebungen wie möglich.</translation>
    </message>
    <message>
        <source>Raises of full height.</source>
        <translation>Hebungen in voller Höhe.</translation>
    </message>
    <message>
        <source>From a chair of normal height, arms crossed, rise on one leg.</source>
        <translation>Vom normal hohen Stuhl, Arme gekreuzt, auf einem Bein aufstehen.</translation>
    </message>
    <message>
        <source>Difficult: only with a swing. Unable: not at all.</source>
        <translation>Erschwert: nur mit Schwung. Unmöglich: gar nicht.</translation>
    </message>
    <message>
        <source>Stand on one leg for thirty seconds, watch the pelvis from behind.</source>
        <translation>Dreißig Sekunden auf einem Bein stehen, Becken von hinten beobachten.</translation>
    </message>
    <message>
        <source>The pelvis drops on the lifted side: the weakness is on the standing side, record it there.</source>
        <translation>Das Becken sinkt auf der gehobenen Seite: die Schwäche liegt auf der Standseite, dort erfassen.</translation>
    </message>
    <message>
        <source>Feet together, arms at the sides; eyes open, then closed for twenty seconds; stand ready to catch.</source>
        <translation>Füße zusammen, Arme hängend; Augen offen, dann zwanzig Sekunden geschlossen; zum Auffangen bereitstehen.</translation>
    </message>
    <message>
        <source>Sways or steps only with the eyes closed.</source>
        <translation>Schwankt oder tritt nur bei geschlossenen Augen.</translation>
    </message>
    <message>
        <source>Ten paces heel to toe on a line.</source>
        <translation>Zehn Schritte Ferse an Zehen auf einer Linie.</translation>
    </message>
    <message>
        <source>Steps off the line, or cannot begin.</source>
        <translation>Tritt daneben oder kann nicht beginnen.</translation>
    </message>
    <message>
        <source>Legs hanging free; tap below the kneecap. Nothing comes: hooked fingers, pull, tap again and record that reinforcement was used.</source>
        <translation>Beine frei hängend; unter der Kniescheibe klopfen. Kommt nichts: Finger verhaken, ziehen, erneut klopfen und die Bahnung vermerken.</translation>
    </message>
    <message>
        <source>0 none, 1 less, 2 usual, 3 brisk, 4 clonus; a difference between sides weighs more than the figure.</source>
        <translation>0 fehlt, 1 weniger, 2 üblich, 3 lebhaft, 4 Klonus; ein Seitenunterschied wiegt mehr als die Zahl.</translation>
    </message>
    <message>
        <source>Foot held lightly at a right angle; tap the tendon, or the sole over your hand.</source>
        <translation>Fuß leicht im rechten Winkel halten; auf die Sehne oder über der Hand auf die Sohle klopfen.</translation>
    </message>
    <message>
        <source>Graded as the knee. Both absent is common in old age.</source>
        <translation>Grade wie beim Knie. Beidseits fehlend ist im hohen Alter häufig.</translation>
    </message>
    <message>
        <source>Finger across the inner hamstring tendon behind the bent knee; tap the finger.</source>
        <translation>Finger quer auf die innere Beugersehne hinter dem gebeugten Knie; auf den Finger klopfen.</translation>
    </message>
    <message>
        <source>A difference between sides; hard to obtain in many healthy people.</source>
        <translation>Ein Seitenunterschied; bei vielen Gesunden schwer auslösbar.</translation>
    </message>
    <message>
        <source>Legs slightly apart; finger on the tendon above the inner knee, tap the finger.</source>
        <translation>Beine leicht gespreizt; Finger auf die Sehne über dem inneren Knie, auf den Finger klopfen.</translation>
    </message>
    <message>
        <source>A difference between sides.</source>
        <translation>Ein Seitenunterschied.</translation>
    </message>
    <message>
        <source>Hook the fingers of both hands and pull at the moment of the tap.</source>
        <translation>Finger beider Hände verhaken und im Moment des Klopfens ziehen.</translation>
    </message>
    <message>
        <source>Yes when a reflex was recorded with its help.</source>
        <translation>Ja, wenn ein Reflex mit dieser Hilfe erfasst wurde.</translation>
    </message>
    <message>
        <source>Stroke the outer sole from the heel forward and across the ball with a blunt point; watch the first movement of the great toe.</source>
        <translation>Mit stumpfer Spitze die äußere Sohle von der Ferse nach vorn und über den Ballen streichen; erste Bewegung der Großzehe beachten.</translation>
    </message>
    <message>
        <source>Up: the toe rises. Equivocal: a withdrawal or unlike each time.</source>
        <translation>Streckend: die Zehe hebt sich. Unklar: Rückzug oder jedes Mal anders.</translation>
    </message>
    <message>
        <source>Knee bent and supported; push the foot up briskly and hold.</source>
        <translation>Knie gebeugt und gestützt; Fuß rasch hochdrücken und halten.</translation>
    </message>
    <message>
        <source>Five beats or more that keep going.</source>
        <translation>Fünf oder mehr anhaltende Schläge.</translation>
    </message>
    <message>
        <source>Patient relaxed; bend and straighten the knee, slow and then fast.</source>
        <translation>Patient entspannt; Knie langsam, dann schnell beugen und strecken.</translation>
    </message>
    <message>
        <source>Flaccid: no resistance. Spastic: a catch that comes with speed.</source>
        <translation>Schlaff: kein Widerstand. Spastisch: ein Widerstand, der mit dem Tempo kommt.</translation>
    </message>
    <message>
        <source>Seated: lift the knee; push down just above it.</source>
        <translation>Sitzend: Knie heben; knapp darüber nach unten drücken.</translation>
    </message>
    <message>
        <source>5 holds full push, 4 holds some, 3 only against gravity, 2 only without it, 1 a flicker, 0 nothing.</source>
        <translation>5 hält vollen Druck, 4 etwas, 3 nur gegen Schwerkraft, 2 nur ohne sie, 1 ein Zucken, 0 nichts.</translation>
    </message>
    <message>
        <source>Seated: squeeze the knees against your fists.</source>
        <translation>Sitzend: Knie gegen die Fäuste zusammendrücken.</translation>
    </message>
    <message>
        <source>Grades as for hip flexion.</source>
        <translation>Grade wie bei der Hüftbeugung.</translation>
    </message>
    <message>
        <source>Seated, knee a little bent: straighten; push down above the ankle. Strong legs hide weakness: compare rising on one leg.</source>
        <translation>Sitzend, Knie leicht gebeugt: strecken; über dem Knöchel nach unten drücken. Kräftige Beine verbergen Schwäche: Aufstehen auf einem Bein vergleichen.</translation>
    </message>
    <message>
        <source>Seated: pull the heel back under the chair against your hand.</source>
        <translation>Sitzend: Ferse gegen die Hand unter den Stuhl ziehen.</translation>
    </message>
    <message>
        <source>Foot pulled up and kept there; push it down and outward from above the forefoot.</source>
        <translation>Fuß hochgezogen halten; über dem Vorfuß nach unten und außen drücken.</translation>
    </message>
    <message>
        <source>Great toe pulled up and kept there; push on its nail with one finger, both sides at once to compare.</source>
        <translation>Großzehe hochgezogen halten; mit einem Finger auf den Nagel drücken, beide Seiten zugleich zum Vergleich.</translation>
    </message>
    <message>
        <source>Lesser toes pulled up; push down on them together.</source>
        <translation>Kleine Zehen hochgezogen; gemeinsam nach unten drücken.</translation>
    </message>
    <message>
        <source>Foot pointed down and turned in; push it out at the inner edge. Pointing down leaves out the muscle that also pulls up.</source>
        <translation>Fuß gesenkt und einwärts gedreht; am Innenrand nach außen drücken. Das Senken schaltet den Fußheber aus.</translation>
    </message>
    <message>
        <source>Foot turned out; push it in at the outer edge.</source>
        <translation>Fuß auswärts gedreht; am Außenrand nach innen drücken.</translation>
    </message>
    <message>
        <source>Seated push on your palm finds only marked weakness: a healthy calf wins. Rather let the patient rise on one heel, standing.</source>
        <translation>Druck im Sitzen auf die Hand zeigt nur ausgeprägte Schwäche: eine gesunde Wade gewinnt. Besser im Stehen auf eine Ferse heben lassen.</translation>
    </message>
    <message>
        <source>5 several full raises, 4 fewer or lower, 3 or less: none.</source>
        <translation>5 mehrere volle Hebungen, 4 weniger oder niedriger, 3 oder weniger: keine.</translation>
    </message>
    <message>
        <source>Toes curled over your finger; pull them straight.</source>
        <translation>Zehen über den Finger gekrümmt; gerade ziehen.</translation>
    </message>
    <message>
        <source>On the side, upper leg straight and in line: lift; push down above the ankle.</source>
        <translation>Auf der Seite, oberes Bein gestreckt in der Achse: heben; über dem Knöchel nach unten drücken.</translation>
    </message>
    <message>
        <source>Prone, knee bent: lift the thigh; push down on it.</source>
        <translation>Bauchlage, Knie gebeugt: Oberschenkel heben; nach unten drücken.</translation>
    </message>
    <message>
        <source>Push evenly and feel how the strength ends.</source>
        <translation>Gleichmäßig drücken und spüren, wie die Kraft endet.</translation>
    </message>
    <message>
        <source>Full for a moment, then suddenly let go; pain does this too.</source>
        <translation>Einen Moment voll, dann plötzlich losgelassen; auch Schmerz tut das.</translation>
    </message>
    <message>
        <source>Fork of 128 Hz on the great toe's end joint; eyes closed, ask when it stops.</source>
        <translation>Stimmgabel 128 Hz auf das Endgelenk der Großzehe; Augen zu, fragen, wann es aufhört.</translation>
    </message>
    <message>
        <source>Reduced: ends clearly before you or the other side. Absent: not felt.</source>
        <translation>Vermindert: endet deutlich vor Ihnen oder der anderen Seite. Fehlend: nicht gespürt.</translation>
    </message>
    <message>
        <source>Hold the great toe at its sides, move it a little up or down, eyes closed.</source>
        <translation>Großzehe seitlich fassen, ein wenig auf und ab bewegen, Augen zu.</translation>
    </message>
    <message>
        <source>More than one wrong in ten.</source>
        <translation>Mehr als einer von zehn falsch.</translation>
    </message>
    <message>
        <source>Seated, hands behind: straighten the knee slowly with the foot up.</source>
        <translation>Sitzend, Hände hinten: Knie langsam strecken, Fuß hochgezogen.</translation>
    </message>
    <message>
        <source>Leg pain: the familiar pain below the knee or down the leg. A stretched hamstring is not positive.</source>
        <translation>Beinschmerz: der bekannte Schmerz unter dem Knie oder ins Bein hinab. Gedehnte Oberschenkelrückseite ist nicht positiv.</translation>
    </message>
    <message>
        <source>Seated, slouch, chin down, straighten the knee, foot up; then let the head up.</source>
        <translation>Sitzend, zusammensinken, Kinn zur Brust, Knie strecken, Fuß hoch; dann den Kopf heben lassen.</translation>
    </message>
    <message>
        <source>Leg pain: the familiar pain comes on and eases as the head comes up.</source>
        <translation>Beinschmerz: der bekannte Schmerz kommt und lässt beim Heben des Kopfs nach.</translation>
    </message>
    <message>
        <source>Lying, knee straight and held: raise the leg slowly by the heel until it hurts.</source>
        <translation>Liegend, Knie gestreckt gehalten: Bein an der Ferse langsam heben, bis es schmerzt.</translation>
    </message>
    <message>
        <source>Leg pain: the familiar leg pain comes on. Pain in the back or a tight hamstring alone is named as such.</source>
        <translation>Beinschmerz: der bekannte Beinschmerz kommt. Nur Rückenschmerz oder straffe Oberschenkelrückseite wird so benannt.</translation>
    </message>
    <message>
        <source>Angle between leg and couch where the familiar pain began.</source>
        <translation>Winkel zwischen Bein und Liege, bei dem der bekannte Schmerz begann.</translation>
    </message>
    <message>
        <source>The angle in degrees.</source>
        <translation>Der Winkel in Grad.</translation>
    </message>
    <message>
        <source>Lower the raised leg until the pain has just gone, then push the foot up.</source>
        <translation>Gehobenes Bein senken, bis der Schmerz gerade weg ist, dann Fuß hochdrücken.</translation>
    </message>
    <message>
        <source>The familiar leg pain is back.</source>
        <translation>Der bekannte Beinschmerz ist wieder da.</translation>
    </message>
    <message>
        <source>Raise the leg that does not hurt.</source>
        <translation>Das nicht schmerzende Bein heben.</translation>
    </message>
    <message>
        <source>The familiar pain comes on in the other leg. Record it at the leg that was raised.</source>
        <translation>Der bekannte Schmerz kommt im anderen Bein. Am gehobenen Bein erfassen.</translation>
    </message>
    <message>
        <source>At the angle of pain bend the knee a little until it eases, then press behind the knee.</source>
        <translation>Beim Schmerzwinkel das Knie etwas beugen, bis es nachlässt, dann in die Kniekehle drücken.</translation>
    </message>
    <message>
        <source>The familiar pain runs up or down the leg.</source>
        <translation>Der bekannte Schmerz zieht im Bein auf oder ab.</translation>
    </message>
    <message>
        <source>Prone, knee bent: lift the thigh off the couch.</source>
        <translation>Bauchlage, Knie gebeugt: Oberschenkel von der Liege heben.</translation>
    </message>
    <message>
        <source>The familiar pain down the front of the thigh; a tight thigh muscle is not positive.</source>
        <translation>Der bekannte Schmerz an der Vorderseite des Oberschenkels; ein straffer Muskel ist nicht positiv.</translation>
    </message>
    <message>
        <source>Watch the trunk while the seated leg is straightened.</source>
        <translation>Den Rumpf beobachten, während das Bein im Sitzen gestreckt wird.</translation>
    </message>
    <message>
        <source>The patient leans back on the hands to ease it.</source>
        <translation>Der Patient lehnt sich zur Erleichterung auf die Hände zurück.</translation>
    </message>
    <message>
        <source>Seated, thigh still: swing the foot outward; read the angle of the shin.</source>
        <translation>Sitzend, Oberschenkel still: Fuß nach außen schwenken; Winkel des Unterschenkels ablesen.</translation>
    </message>
    <message>
        <source>The angle where the pelvis begins to move.</source>
        <translation>Der Winkel, bei dem sich das Becken zu bewegen beginnt.</translation>
    </message>
    <message>
        <source>Seated, thigh still: swing the foot inward.</source>
        <translation>Sitzend, Oberschenkel still: Fuß nach innen schwenken.</translation>
    </message>
    <message>
        <source>Ask at the end of both rotations.</source>
        <translation>Am Ende beider Drehungen fragen.</translation>
    </message>
    <message>
        <source>Pain in the groin, or the pain the patient came with.</source>
        <translation>Schmerz in der Leiste oder der Schmerz, mit dem der Patient kam.</translation>
    </message>
    <message>
        <source>Lying, leg straight: roll the whole leg in and out with flat hands.</source>
        <translation>Liegend, Bein gestreckt: das ganze Bein mit flachen Händen ein- und auswärts rollen.</translation>
    </message>
    <message>
        <source>Groin pain or the familiar pain.</source>
        <translation>Leistenschmerz oder der bekannte Schmerz.</translation>
    </message>
    <message>
        <source>Lying, ankle on the other knee: let the knee sink out, steady the pelvis, press gently.</source>
        <translation>Liegend, Knöchel auf dem anderen Knie: Knie nach außen sinken lassen, Becken halten, sanft drücken.</translation>
    </message>
    <message>
        <source>Familiar pain; groin speaks for the hip, low back at the side for the sacroiliac joint.</source>
        <translation>Bekannter Schmerz; Leiste spricht für die Hüfte, unterer Rücken seitlich für das Iliosakralgelenk.</translation>
    </message>
    <message>
        <source>Lying, hip bent fully, brought across and turned in.</source>
        <translation>Liegend, Hüfte ganz gebeugt, über die Mitte geführt und einwärts gedreht.</translation>
    </message>
    <message>
        <source>Familiar groin pain.</source>
        <translation>Bekannter Leistenschmerz.</translation>
    </message>
    <message>
        <source>Lying: press both front hip bones outward and back, slowly and long.</source>
        <translation>Liegend: beide vorderen Darmbeinstachel langsam und anhaltend nach außen hinten drücken.</translation>
    </message>
    <message>
        <source>The familiar pain, not a local soreness.</source>
        <translation>Der bekannte Schmerz, nicht örtlicher Druckschmerz.</translation>
    </message>
    <message>
        <source>On the side: press the upper hip bone straight down.</source>
        <translation>Auf der Seite: oberen Beckenkamm gerade nach unten drücken.</translation>
    </message>
    <message>
        <source>The familiar pain.</source>
        <translation>Der bekannte Schmerz.</translation>
    </message>
    <message>
        <source>Lying, hip at a right angle, hand under the sacrum: push along the thigh.</source>
        <translation>Liegend, Hüfte rechtwinklig, Hand unter dem Kreuzbein: längs des Oberschenkels schieben.</translation>
    </message>
    <message>
        <source>The familiar pain on that side.</source>
        <translation>Der bekannte Schmerz auf dieser Seite.</translation>
    </message>
    <message>
        <source>At the edge of the couch: one knee to the chest, the other leg over the edge; press both apart.</source>
        <translation>Am Rand der Liege: ein Knie zur Brust, das andere Bein über den Rand; beide auseinanderdrücken.</translation>
    </message>
    <message>
        <source>The familiar pain at the sacroiliac joint; record its side.</source>
        <translation>Der bekannte Schmerz am Iliosakralgelenk; Seite erfassen.</translation>
    </message>
    <message>
        <source>Prone: press the middle of the sacrum straight down.</source>
        <translation>Bauchlage: Mitte des Kreuzbeins gerade nach unten drücken.</translation>
    </message>
    <message>
        <source>Tap behind and below the head of the fibula, knee bent.</source>
        <translation>Hinter und unter dem Fibulaköpfchen klopfen, Knie gebeugt.</translation>
    </message>
    <message>
        <source>Tingling toward the outer shin or the top of the foot.</source>
        <translation>Kribbeln zum äußeren Unterschenkel oder Fußrücken.</translation>
    </message>
    <message>
        <source>Tap behind and below the inner ankle.</source>
        <translation>Hinter und unter dem Innenknöchel klopfen.</translation>
    </message>
    <message>
        <source>Tingling into the sole.</source>
        <translation>Kribbeln in die Sohle.</translation>
    </message>
    <message>
        <source>Tap a thumb's breadth inside and below the front hip bone.</source>
        <translation>Eine Daumenbreite medial und unter dem vorderen Darmbeinstachel klopfen.</translation>
    </message>
    <message>
        <source>Tingling over the outer thigh.</source>
        <translation>Kribbeln über dem äußeren Oberschenkel.</translation>
    </message>
    <message>
        <source>Two or three fingers on top of the foot, outside the great toe's tendon.</source>
        <translation>Zwei oder drei Finger auf den Fußrücken, außen neben der Großzehensehne.</translation>
    </message>
    <message>
        <source>Absent in some healthy people: feel behind the inner ankle too.</source>
        <translation>Fehlt bei manchen Gesunden: auch hinter dem Innenknöchel tasten.</translation>
    </message>
    <message>
        <source>Behind the inner ankle, foot relaxed.</source>
        <translation>Hinter dem Innenknöchel, Fuß entspannt.</translation>
    </message>
    <message>
        <source>Reduced or absent against the other side.</source>
        <translation>Vermindert oder fehlend gegenüber der anderen Seite.</translation>
    </message>
    <message>
        <source>In the middle of the groin crease.</source>
        <translation>In der Mitte der Leistenbeuge.</translation>
    </message>
    <message>
        <source>Higher ankle pressure of that leg divided by the higher arm pressure, lying, after rest.</source>
        <translation>Höherer Knöcheldruck dieses Beins geteilt durch den höheren Armdruck, liegend, nach Ruhe.</translation>
    </message>
    <message>
        <source>The ratio.</source>
        <translation>Der Quotient.</translation>
    </message>
    <message>
        <source>Lying straight: tape from the front hip bone to the tip of the inner ankle.</source>
        <translation>Gerade liegend: Maßband vom vorderen Darmbeinstachel zur Spitze des Innenknöchels.</translation>
    </message>
    <message>
        <source>The length in centimeters.</source>
        <translation>Die Länge in Zentimetern.</translation>
    </message>
    <message>
        <source>Tape at the same distance above both kneecaps, muscles relaxed; note the distance.</source>
        <translation>Maßband im gleichen Abstand über beiden Kniescheiben, Muskeln entspannt; Abstand notieren.</translation>
    </message>
    <message>
        <source>The girth in centimeters.</source>
        <translation>Der Umfang in Zentimetern.</translation>
    </message>
    <message>
        <source>Tape at the thickest place, foot hanging.</source>
        <translation>Maßband an der dicksten Stelle, Fuß hängend.</translation>
    </message>
    <message>
        <source>With consent and a chaperone; gloved finger, at rest.</source>
        <translation>Mit Einwilligung und Begleitperson; Finger mit Handschuh, in Ruhe.</translation>
    </message>
    <message>
        <source>Lax against what is usual for age. A normal tone does not rule out a compressed cauda equina.</source>
        <translation>Schlaff gegenüber dem altersüblichen Tonus. Ein normaler Tonus schließt eine komprimierte Cauda equina nicht aus.</translation>
    </message>
    <message>
        <source>Ask to squeeze as if holding on.</source>
        <translation>Bitten zuzukneifen, als hielte man zurück.</translation>
    </message>
    <message>
        <source>Weak or none.</source>
        <translation>Schwach oder keine.</translation>
    </message>
    <message>
        <source>Stroke the skin beside the anus with a blunt point.</source>
        <translation>Die Haut neben dem After mit stumpfer Spitze bestreichen.</translation>
    </message>
    <message>
        <source>No visible twitch.</source>
        <translation>Kein sichtbares Zucken.</translation>
    </message>
    <message>
        <source>Draw a pin up the trunk from the groin, on both sides and beside the spine.</source>
        <translation>Eine Nadel von der Leiste den Rumpf hinauf führen, beidseits und neben der Wirbelsäule.</translation>
    </message>
    <message>
        <source>A height above which it suddenly feels sharp.</source>
        <translation>Eine Höhe, über der es plötzlich spitz wirkt.</translation>
    </message>
    <message>
        <source>Lying, knees up: feel deep above the navel with both hands.</source>
        <translation>Liegend, Knie angestellt: mit beiden Händen tief über dem Nabel tasten.</translation>
    </message>
    <message>
        <source>A pulsating width that pushes the hands apart.</source>
        <translation>Eine pulsierende Breite, die die Hände auseinanderdrückt.</translation>
    </message>
    <message>
        <source>Lying, hand under the heel of the weak side: ask to push that leg down, then to lift the other.</source>
        <translation>Liegend, Hand unter der Ferse der schwachen Seite: dieses Bein nach unten drücken, dann das andere heben lassen.</translation>
    </message>
    <message>
        <source>The weak leg pushes down strongly while the other lifts.</source>
        <translation>Das schwache Bein drückt kräftig nach unten, während das andere sich hebt.</translation>
    </message>
    <message>
        <source>Watch how the patient sits, stands and changes position before you ask anything.</source>
        <translation>Beobachten, wie der Patient sitzt, steht und sich umlagert, bevor Sie fragen.</translation>
    </message>
    <message>
        <source>Shifting, leaning on hands or unable to sit or lie: uncomfortable. Crying out, pale or sweating: marked distress.</source>
        <translation>Umlagern, Aufstützen, nicht sitzen oder liegen können: unbequem. Aufschreien, blass oder schwitzend: starke Beschwerden.</translation>
    </message>
    <message>
        <source>From the side, bare to the buttocks, weight on both feet: look at the hollow of the low back.</source>
        <translation>Von der Seite, bis zum Gesäß entkleidet, Gewicht auf beiden Füßen: Hohlkreuz ansehen.</translation>
    </message>
    <message>
        <source>Flattened or deepened against what is usual for age and build.</source>
        <translation>Flacher oder tiefer als für Alter und Körperbau üblich.</translation>
    </message>
    <message>
        <source>Look at the back, buttocks and the whole leg in good light, front and back.</source>
        <translation>Rücken, Gesäß und das ganze Bein bei gutem Licht ansehen, vorn und hinten.</translation>
    </message>
    <message>
        <source>Scars, blisters, or a dimple, tuft of hair or swelling in the midline.</source>
        <translation>Narben, Bläschen oder Grübchen, Haarbüschel oder Schwellung der Mittellinie.</translation>
    </message>
    <message>
        <source>Look at and beside the midline from neck to sacrum.</source>
        <translation>Auf und neben der Mittellinie vom Nacken bis zum Kreuzbein schauen.</translation>
    </message>
    <message>
        <source>Any fresh bruise or graze over the spine.</source>
        <translation>Jeder frische Bluterguss oder jede Schürfung über der Wirbelsäule.</translation>
    </message>
    <message>
        <source>Where there are blisters or scabs in one band: say along which strip of skin they run.</source>
        <translation>Wo Bläschen oder Krusten in einem Band stehen: sagen, welchem Hautstreifen sie folgen.</translation>
    </message>
    <message>
        <source>One strip on one side; name it.</source>
        <translation>Ein Streifen auf einer Seite; nennen.</translation>
    </message>
    <message>
        <source>Lying, both calves relaxed: compare size, warmth and tenderness; measure where in doubt.</source>
        <translation>Liegend, beide Waden entspannt: Dicke, Wärme und Druckschmerz vergleichen; im Zweifel messen.</translation>
    </message>
    <message>
        <source>One calf clearly thicker, warmer or tender deep in its middle.</source>
        <translation>Eine Wade deutlich dicker, wärmer oder tief in der Mitte druckschmerzhaft.</translation>
    </message>
    <message>
        <source>Two inclinometers, one over the last thoracic, one over the first sacral spine, set to zero standing; bend forward and take the difference.</source>
        <translation>Zwei Neigungsmesser, einer über dem letzten Brust-, einer über dem ersten Kreuzbeinwirbel, im Stehen auf null; vorbeugen und Differenz nehmen.</translation>
    </message>
    <message>
        <source>The angle of the lumbar spine in degrees.</source>
        <translation>Der Winkel der Lendenwirbelsäule in Grad.</translation>
    </message>
    <message>
        <source>The same two places, bending backward with hands on the hips.</source>
        <translation>Dieselben Stellen, Rückbeugen mit den Händen an den Hüften.</translation>
    </message>
    <message>
        <source>Feet together, no twist: slide the hand down the outside of the thigh; read the inclinometer over the last thoracic spine.</source>
        <translation>Füße zusammen, ohne Drehung: Hand außen am Oberschenkel abwärts gleiten; Neigungsmesser über dem letzten Brustwirbel ablesen.</translation>
    </message>
    <message>
        <source>The angle in degrees for each side.</source>
        <translation>Der Winkel in Grad für jede Seite.</translation>
    </message>
    <message>
        <source>Ask during the side bend what hurts and where.</source>
        <translation>Während der Seitneigung fragen, was und wo es schmerzt.</translation>
    </message>
    <message>
        <source>Back or leg, as for the forward bend; record the side to which the trunk bends.</source>
        <translation>Rücken oder Bein, wie beim Vorbeugen; Seite erfassen, zu der sich der Rumpf neigt.</translation>
    </message>
    <message>
        <source>Seated with the pelvis held: turn the shoulders to each side.</source>
        <translation>Sitzend, Becken gehalten: Schultern zu jeder Seite drehen.</translation>
    </message>
    <message>
        <source>The angle of the shoulders against the pelvis in degrees.</source>
        <translation>Der Winkel der Schultern gegen das Becken in Grad.</translation>
    </message>
    <message>
        <source>Ask at the end of each turn what hurts.</source>
        <translation>Am Ende jeder Drehung fragen, was schmerzt.</translation>
    </message>
    <message>
        <source>Back or leg; record the side to which the trunk turns.</source>
        <translation>Rücken oder Bein; Seite erfassen, zu der sich der Rumpf dreht.</translation>
    </message>
    <message>
        <source>Bent forward with palms together: lay the inclinometer across the back at its highest place.</source>
        <translation>Vorgebeugt, Handflächen zusammen: Neigungsmesser an der höchsten Stelle quer auf den Rücken legen.</translation>
    </message>
    <message>
        <source>The tilt in degrees.</source>
        <translation>Die Neigung in Grad.</translation>
    </message>
    <message>
        <source>Thumb on the bony point under the dimple, light then firm.</source>
        <translation>Daumen auf den Knochenpunkt unter dem Grübchen, erst leicht, dann fest.</translation>
    </message>
    <message>
        <source>The familiar pain, clearly more than on the other side.</source>
        <translation>Der bekannte Schmerz, deutlich mehr als auf der anderen Seite.</translation>
    </message>
    <message>
        <source>On the side, hip slightly bent: press the outer point of the hip and just behind it.</source>
        <translation>Auf der Seite, Hüfte leicht gebeugt: äußeren Hüftpunkt und knapp dahinter drücken.</translation>
    </message>
    <message>
        <source>The familiar pain over the bone.</source>
        <translation>Der bekannte Schmerz über dem Knochen.</translation>
    </message>
    <message>
        <source>Pinch or roll the skin of the low back lightly over a wide area.</source>
        <translation>Die Haut des unteren Rückens großflächig leicht kneifen oder rollen.</translation>
    </message>
    <message>
        <source>Pain over a wide area from the light touch alone.</source>
        <translation>Großflächiger Schmerz allein durch die leichte Berührung.</translation>
    </message>
    <message>
        <source>Press deeply at several places of low back, pelvis and chest wall.</source>
        <translation>An mehreren Stellen von unterem Rücken, Becken und Brustwand tief drücken.</translation>
    </message>
    <message>
        <source>Tender across places no one structure joins.</source>
        <translation>Druckschmerz an Stellen, die keine Struktur verbindet.</translation>
    </message>
    <message>
        <source>Standing: press lightly on the top of the head; pain in the neck does not count.</source>
        <translation>Stehend: leicht auf den Scheitel drücken; Nackenschmerz zählt nicht.</translation>
    </message>
    <message>
        <source>Low back pain from the light pressure.</source>
        <translation>Schmerz im unteren Rücken durch den leichten Druck.</translation>
    </message>
    <message>
        <source>Standing, feet together: turn shoulders and pelvis together as one piece.</source>
        <translation>Stehend, Füße zusammen: Schultern und Becken gemeinsam drehen.</translation>
    </message>
    <message>
        <source>Low back pain although the spine does not turn. Root pain from a stretched nerve does not count.</source>
        <translation>Schmerz im unteren Rücken, obwohl sich die Wirbelsäule nicht dreht. Wurzelschmerz durch Nervendehnung zählt nicht.</translation>
    </message>
    <message>
        <source>Watch face, voice and posture through the whole examination; culture and fear change them.</source>
        <translation>Gesicht, Stimme und Haltung während der ganzen Untersuchung beobachten; Kultur und Angst verändern sie.</translation>
    </message>
    <message>
        <source>A reaction out of proportion, seen more than once.</source>
        <translation>Eine unverhältnismäßige Reaktion, mehr als einmal gesehen.</translation>
    </message>
    <message>
        <source>Test strength group by group and feel how it fails.</source>
        <translation>Kraft Gruppe für Gruppe prüfen und spüren, wie sie nachgibt.</translation>
    </message>
    <message>
        <source>Jerky giving way in many groups that no root or nerve explains.</source>
        <translation>Ruckartiges Nachgeben in vielen Gruppen, das keine Wurzel und kein Nerv erklärt.</translation>
    </message>
    <message>
        <source>Map the numb area with the patient's eyes closed.</source>
        <translation>Das taube Gebiet bei geschlossenen Augen abgrenzen.</translation>
    </message>
    <message>
        <source>A whole leg or half the body, with an edge no root, nerve or length explains.</source>
        <translation>Ein ganzes Bein oder eine Körperhälfte, mit einer Grenze, die weder Wurzel noch Nerv noch Länge erklärt.</translation>
    </message>
    <message>
        <source>Let the patient walk barefoot on a hard floor and listen.</source>
        <translation>Den Patienten barfuß auf hartem Boden gehen lassen und hinhören.</translation>
    </message>
    <message>
        <source>The forefoot slaps down after the heel, or the toes drag.</source>
        <translation>Der Vorfuß klatscht nach der Ferse auf, oder die Zehen schleifen.</translation>
    </message>
    <message>
        <source>Watch several steps from the front and from the side.</source>
        <translation>Mehrere Schritte von vorn und von der Seite ansehen.</translation>
    </message>
    <message>
        <source>A shortened or uneven step of one leg.</source>
        <translation>Ein verkürzter oder ungleicher Schritt eines Beins.</translation>
    </message>
    <message>
        <source>Squat as deep as comfortable and rise without hands; stand by.</source>
        <translation>So tief wie angenehm hocken und ohne Hände aufstehen; danebenstehen.</translation>
    </message>
    <message>
        <source>Difficult: with a hand or not deep. Unable: cannot rise.</source>
        <translation>Erschwert: mit einer Hand oder nicht tief. Unmöglich: kommt nicht hoch.</translation>
    </message>
    <message>
        <source>A few small hops on each leg; not with suspected fracture or severe pain.</source>
        <translation>Einige kleine Sprünge auf jedem Bein; nicht bei Frakturverdacht oder starkem Schmerz.</translation>
    </message>
    <message>
        <source>A sharp, well-placed pain in bone, groin or back.</source>
        <translation>Ein scharfer, gut umschriebener Schmerz in Knochen, Leiste oder Rücken.</translation>
    </message>
    <message>
        <source>Ask after each weak movement whether pain stopped it.</source>
        <translation>Nach jeder schwachen Bewegung fragen, ob Schmerz sie stoppte.</translation>
    </message>
    <message>
        <source>Pain that starts before full effort.</source>
        <translation>Schmerz, der vor vollem Krafteinsatz beginnt.</translation>
    </message>
    <message>
        <source>Backs of your hands on both legs from knee to toes, compare color lying.</source>
        <translation>Handrücken an beide Beine vom Knie bis zu den Zehen, Farbe liegend vergleichen.</translation>
    </message>
    <message>
        <source>One leg clearly colder or paler.</source>
        <translation>Ein Bein deutlich kälter oder blasser.</translation>
    </message>
    <message>
        <source>Look between the toes, at the heel and over bony points.</source>
        <translation>Zwischen die Zehen, auf Ferse und Knochenvorsprünge schauen.</translation>
    </message>
    <message>
        <source>An open place, a black toe or dry dead skin.</source>
        <translation>Eine offene Stelle, eine schwarze Zehe oder trockene abgestorbene Haut.</translation>
    </message>
    <message>
        <source>Straighten the seated leg slowly; read the angle between thigh and shin where the familiar pain begins.</source>
        <translation>Das Bein im Sitzen langsam strecken; Winkel zwischen Ober- und Unterschenkel bei Beginn des bekannten Schmerzes ablesen.</translation>
    </message>
    <message>
        <source>The angle in degrees; a straight knee is the end.</source>
        <translation>Der Winkel in Grad; ein gestrecktes Knie ist das Ende.</translation>
    </message>
    <message>
        <source>Lying, other leg flat: bend the hip with the knee bent until the pelvis moves.</source>
        <translation>Liegend, anderes Bein flach: Hüfte bei gebeugtem Knie beugen, bis sich das Becken bewegt.</translation>
    </message>
    <message>
        <source>The angle in degrees where the pelvis begins to move.</source>
        <translation>Der Winkel in Grad, bei dem sich das Becken zu bewegen beginnt.</translation>
    </message>
    <message>
        <source>Grip and finger spread, arm reflexes, quick taps of thumb and finger on both sides.</source>
        <translation>Griff und Fingerspreizen, Armreflexe, rasches Tippen von Daumen und Finger auf beiden Seiten.</translation>
    </message>
    <message>
        <source>Weak, brisk or clumsy beyond what age explains.</source>
        <translation>Schwach, lebhaft oder ungeschickt über das Alter hinaus.</translation>
    </message>
    <message>
        <source>Ear or mouth thermometer, after some minutes indoors.</source>
        <translation>Ohr- oder Mundthermometer, nach einigen Minuten im Raum.</translation>
    </message>
    <message>
        <source>The reading in degrees Celsius.</source>
        <translation>Der Wert in Grad Celsius.</translation>
    </message>
    <message>
        <source>After five minutes of rest, count for half a minute and double it.</source>
        <translation>Nach fünf Minuten Ruhe eine halbe Minute zählen und verdoppeln.</translation>
    </message>
    <message>
        <source>Beats a minute.</source>
        <translation>Schläge in der Minute.</translation>
    </message>
    <message>
        <source>Seated, arm at heart height, cuff of the right size, after five minutes of rest.</source>
        <translation>Sitzend, Arm auf Herzhöhe, passende Manschette, nach fünf Minuten Ruhe.</translation>
    </message>
    <message>
        <source>The upper figure.</source>
        <translation>Der obere Wert.</translation>
    </message>
    <message>
        <source>From the same reading.</source>
        <translation>Aus derselben Messung.</translation>
    </message>
    <message>
        <source>The lower figure.</source>
        <translation>Der untere Wert.</translation>
    </message>
    <message>
        <source>Barefoot, heels to the wall.</source>
        <translation>Barfuß, Fersen an der Wand.</translation>
    </message>
    <message>
        <source>Centimeters.</source>
        <translation>Zentimeter.</translation>
    </message>
    <message>
        <source>Light clothes, no shoes.</source>
        <translation>Leichte Kleidung, ohne Schuhe.</translation>
    </message>
    <message>
        <source>Kilograms.</source>
        <translation>Kilogramm.</translation>
    </message>
    <message>
        <source>Add the ticked sentences of the 24.</source>
        <translation>Die angekreuzten der 24 Sätze zusammenzählen.</translation>
    </message>
    <message>
        <source>0 to 24; more is worse.</source>
        <translation>0 bis 24; mehr ist schlechter.</translation>
    </message>
    <message>
        <source>Add the section scores, divide by five times the sections answered, times one hundred.</source>
        <translation>Die Abschnittswerte addieren, durch das Fünffache der beantworteten Abschnitte teilen, mal hundert.</translation>
    </message>
    <message>
        <source>0 to 100 percent; more is worse.</source>
        <translation>0 bis 100 Prozent; mehr ist schlechter.</translation>
    </message>
    <message>
        <source>Look the raw total up in the table of the short form used.</source>
        <translation>Die Rohsumme in der Tabelle des verwendeten Kurzfragebogens nachschlagen.</translation>
    </message>
    <message>
        <source>A T-score: 50 is the average, 10 its spread; more is worse.</source>
        <translation>Ein T-Wert: 50 ist der Mittelwert, 10 die Streuung; mehr ist schlechter.</translation>
    </message>
    <message>
        <source>Ultrasound of the bladder within minutes of passing water.</source>
        <translation>Ultraschall der Blase wenige Minuten nach dem Wasserlassen.</translation>
    </message>
    <message>
        <source>The volume left in milliliters. A small residual does not rule out a compressed cauda equina.</source>
        <translation>Das verbliebene Volumen in Millilitern. Wenig Restharn schließt eine komprimierte Cauda equina nicht aus.</translation>
    </message>
    <message>
        <source>Eyes closed, a wisp of cotton or a fingertip without stroking, here and at the same place of the other leg.</source>
        <translation>Augen zu, Watteflocke oder Fingerspitze ohne Streichen, hier und an derselben Stelle des anderen Beins.</translation>
    </message>
    <message>
        <source>Less or no feeling against the other side or the trunk; heightened where it stings or burns.</source>
        <translation>Weniger oder kein Gefühl gegenüber der anderen Seite oder dem Rumpf; gesteigert, wo es sticht oder brennt.</translation>
    </message>
    <message>
        <source>Eyes closed, a fresh disposable point, sharp and blunt in mixed order, here and at the same place of the other leg.</source>
        <translation>Augen zu, frische Einmalspitze, spitz und stumpf in gemischter Folge, hier und an derselben Stelle des anderen Beins.</translation>
    </message>
    <message>
        <source>Less sharp, not sharp at all, or unpleasantly sharp against the other side or the trunk.</source>
        <translation>Weniger spitz, gar nicht spitz oder unangenehm spitz gegenüber der anderen Seite oder dem Rumpf.</translation>
    </message>
    <message>
        <source>Injection</source>
        <translation>Injektion</translation>
    </message>
    <message>
        <source>Surgery</source>
        <translation>Operation</translation>
    </message>
    <message>
        <source>Therapy started</source>
        <translation>Therapie begonnen</translation>
    </message>
    <message>
        <source>Therapy ended</source>
        <translation>Therapie beendet</translation>
    </message>
    <message>
        <source>Medication started</source>
        <translation>Medikament begonnen</translation>
    </message>
    <message>
        <source>Medication ended</source>
        <translation>Medikament beendet</translation>
    </message>
    <message>
        <source>Imaging</source>
        <translation>Bildgebung</translation>
    </message>
    <message>
        <source>Fall or accident</source>
        <translation>Sturz oder Unfall</translation>
    </message>
    <message>
        <source>Change of work</source>
        <translation>Änderung der Arbeit</translation>
    </message>
    <message>
        <source>Follow-up</source>
        <translation>Kontrolltermin</translation>
    </message>
</context>
</TS>

<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>medicine</name>
    <message>
        <source>Intake</source>
        <translation>Admisión</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation>De pie</translation>
    </message>
    <message>
        <source>Gait</source>
        <translation>Marcha</translation>
    </message>
    <message>
        <source>Seated</source>
        <translation>Sentado</translation>
    </message>
    <message>
        <source>Lying and provocation</source>
        <translation>Tumbado y provocación</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Revisión</translation>
    </message>
    <message>
        <source>Complaint</source>
        <translation>Molestias</translation>
    </message>
    <message>
        <source>Pain drawing</source>
        <translation>Dibujo del dolor</translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation>Dibujo</translation>
    </message>
    <message>
        <source>Bladder, bowel, saddle</source>
        <translation>Vejiga, intestino, silla de montar</translation>
    </message>
    <message>
        <source>Warning questions</source>
        <translation>Preguntas de alarma</translation>
    </message>
    <message>
        <source>Serious illness</source>
        <translation>Enfermedad grave</translation>
    </message>
    <message>
        <source>Pattern of the pain</source>
        <translation>Patrón del dolor</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Patrón</translation>
    </message>
    <message>
        <source>Inflammatory pattern</source>
        <translation>Patrón inflamatorio</translation>
    </message>
    <message>
        <source>Measures and scores</source>
        <translation>Medidas y puntuaciones</translation>
    </message>
    <message>
        <source>Measures</source>
        <translation>Medidas</translation>
    </message>
    <message>
        <source>Activities that matter</source>
        <translation>Actividades importantes</translation>
    </message>
    <message>
        <source>Inspection</source>
        <translation>Inspección</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Observar</translation>
    </message>
    <message>
        <source>Motion</source>
        <translation>Movilidad</translation>
    </message>
    <message>
        <source>Palpation</source>
        <translation>Palpación</translation>
    </message>
    <message>
        <source>Behavioral signs</source>
        <translation>Signos conductuales</translation>
    </message>
    <message>
        <source>Walking</source>
        <translation>Caminar</translation>
    </message>
    <message>
        <source>Reflexes</source>
        <translation>Reflejos</translation>
    </message>
    <message>
        <source>Reflexes, strength</source>
        <translation>Reflejos, fuerza</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Fuerza</translation>
    </message>
    <message>
        <source>Light touch</source>
        <translation>Tacto ligero</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation>Piel</translation>
    </message>
    <message>
        <source>Pinprick</source>
        <translation>Pinchazo</translation>
    </message>
    <message>
        <source>Deep sensation</source>
        <translation>Sensibilidad profunda</translation>
    </message>
    <message>
        <source>Deep, vessels</source>
        <translation>Profunda, vasos</translation>
    </message>
    <message>
        <source>Nerve tension</source>
        <translation>Tensión nerviosa</translation>
    </message>
    <message>
        <source>Tension, hip</source>
        <translation>Tensión, cadera</translation>
    </message>
    <message>
        <source>Nerve tapping</source>
        <translation>Percusión de nervios</translation>
    </message>
    <message>
        <source>Hip</source>
        <translation>Cadera</translation>
    </message>
    <message>
        <source>Vessels</source>
        <translation>Vasos</translation>
    </message>
    <message>
        <source>Tension, strength</source>
        <translation>Tensión, fuerza</translation>
    </message>
    <message>
        <source>Hip, sacroiliac</source>
        <translation>Cadera, sacroilíaca</translation>
    </message>
    <message>
        <source>Sacroiliac joint</source>
        <translation>Articulación sacroilíaca</translation>
    </message>
    <message>
        <source>Light touch, saddle</source>
        <translation>Tacto ligero, silla de montar</translation>
    </message>
    <message>
        <source>Saddle, abdomen</source>
        <translation>Silla, abdomen</translation>
    </message>
    <message>
        <source>Pinprick, saddle</source>
        <translation>Pinchazo, silla de montar</translation>
    </message>
    <message>
        <source>Abdomen and perineum</source>
        <translation>Abdomen y periné</translation>
    </message>
    <message>
        <source>Lengths and girths</source>
        <translation>Longitudes y perímetros</translation>
    </message>
    <message>
        <source>Vessels, lengths</source>
        <translation>Vasos, longitudes</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
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
        <translation>Disminuido</translation>
    </message>
    <message>
        <source>Absent</source>
        <translation>Ausente</translation>
    </message>
    <message>
        <source>Heightened</source>
        <translation>Aumentado</translation>
    </message>
    <message>
        <source>Difficult</source>
        <translation>Con dificultad</translation>
    </message>
    <message>
        <source>Unable</source>
        <translation>Imposible</translation>
    </message>
    <message>
        <source>Felt</source>
        <translation>Palpable</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Flexor</translation>
    </message>
    <message>
        <source>Equivocal</source>
        <translation>Dudoso</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Extensor</translation>
    </message>
    <message>
        <source>Mute</source>
        <translation>Mudo</translation>
    </message>
    <message>
        <source>Negative</source>
        <translation>Negativo</translation>
    </message>
    <message>
        <source>Hamstring</source>
        <translation>Isquiotibiales</translation>
    </message>
    <message>
        <source>Back pain</source>
        <translation>Dolor de espalda</translation>
    </message>
    <message>
        <source>Leg pain</source>
        <translation>Dolor de pierna</translation>
    </message>
    <message>
        <source>Local pain</source>
        <translation>Dolor local</translation>
    </message>
    <message>
        <source>Familiar pain</source>
        <translation>Dolor conocido</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguno</translation>
    </message>
    <message>
        <source>Mild</source>
        <translation>Leve</translation>
    </message>
    <message>
        <source>Marked</source>
        <translation>Marcado</translation>
    </message>
    <message>
        <source>Ache</source>
        <translation>Sordo</translation>
    </message>
    <message>
        <source>Sharp</source>
        <translation>Punzante</translation>
    </message>
    <message>
        <source>Pins</source>
        <translation>Hormigueo</translation>
    </message>
    <message>
        <source>Numb</source>
        <translation>Adormecido</translation>
    </message>
    <message>
        <source>Main complaint, in the patient's words</source>
        <translation>Molestia principal, en palabras del paciente</translation>
    </message>
    <message>
        <source>Weeks since onset</source>
        <translation>Semanas desde el inicio</translation>
    </message>
    <message>
        <source>How it began</source>
        <translation>Cómo empezó</translation>
    </message>
    <message>
        <source>Gradual</source>
        <translation>Gradual</translation>
    </message>
    <message>
        <source>After lifting</source>
        <translation>Tras levantar peso</translation>
    </message>
    <message>
        <source>Minor trauma</source>
        <translation>Traumatismo leve</translation>
    </message>
    <message>
        <source>Major trauma</source>
        <translation>Traumatismo grave</translation>
    </message>
    <message>
        <source>None recalled</source>
        <translation>No recuerda causa</translation>
    </message>
    <message>
        <source>How it was hurt</source>
        <translation>Cómo se lesionó</translation>
    </message>
    <message>
        <source>No injury</source>
        <translation>Sin lesión</translation>
    </message>
    <message>
        <source>Fall from standing</source>
        <translation>Caída de su altura</translation>
    </message>
    <message>
        <source>Fall from a height</source>
        <translation>Caída de altura</translation>
    </message>
    <message>
        <source>Road accident</source>
        <translation>Accidente de tráfico</translation>
    </message>
    <message>
        <source>Direct blow</source>
        <translation>Golpe directo</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Otro</translation>
    </message>
    <message>
        <source>How fast it came on</source>
        <translation>Rapidez del inicio</translation>
    </message>
    <message>
        <source>Sudden</source>
        <translation>Súbito</translation>
    </message>
    <message>
        <source>Hours to days</source>
        <translation>Horas o días</translation>
    </message>
    <message>
        <source>Weeks</source>
        <translation>Semanas</translation>
    </message>
    <message>
        <source>Months to years</source>
        <translation>Meses o años</translation>
    </message>
    <message>
        <source>Pain between the shoulder blades or round the chest</source>
        <translation>Dolor entre los omóplatos o alrededor del tórax</translation>
    </message>
    <message>
        <source>Belly or flank pain</source>
        <translation>Dolor abdominal o en el flanco</translation>
    </message>
    <message>
        <source>Fainted or felt faint</source>
        <translation>Desmayo o mareo</translation>
    </message>
    <message>
        <source>Course since then</source>
        <translation>Evolución desde entonces</translation>
    </message>
    <message>
        <source>Improving</source>
        <translation>Mejora</translation>
    </message>
    <message>
        <source>Unchanged</source>
        <translation>Sin cambios</translation>
    </message>
    <message>
        <source>Worsening</source>
        <translation>Empeora</translation>
    </message>
    <message>
        <source>Back pain now</source>
        <translation>Dolor de espalda ahora</translation>
    </message>
    <message>
        <source>Leg pain now</source>
        <translation>Dolor de pierna ahora</translation>
    </message>
    <message>
        <source>Leg pain goes below the knee</source>
        <translation>El dolor de pierna baja de la rodilla</translation>
    </message>
    <message>
        <source>Tingling or numbness felt in the leg</source>
        <translation>Hormigueo o adormecimiento en la pierna</translation>
    </message>
    <message>
        <source>Groin pain</source>
        <translation>Dolor inguinal</translation>
    </message>
    <message>
        <source>Leg weakness noticed</source>
        <translation>Debilidad de la pierna percibida</translation>
    </message>
    <message>
        <source>Worse sitting</source>
        <translation>Peor sentado</translation>
    </message>
    <message>
        <source>Worse standing or walking</source>
        <translation>Peor de pie o al caminar</translation>
    </message>
    <message>
        <source>Standing still brings it on</source>
        <translation>Estar de pie quieto lo provoca</translation>
    </message>
    <message>
        <source>Walking pain is above or below the knee</source>
        <translation>Dolor al caminar por encima o debajo de la rodilla</translation>
    </message>
    <message>
        <source>Above</source>
        <translation>Por encima</translation>
    </message>
    <message>
        <source>Below</source>
        <translation>Por debajo</translation>
    </message>
    <message>
        <source>Both</source>
        <translation>Ambos</translation>
    </message>
    <message>
        <source>Worse bending forward</source>
        <translation>Peor al inclinarse hacia delante</translation>
    </message>
    <message>
        <source>Worse on cough or sneeze</source>
        <translation>Peor al toser o estornudar</translation>
    </message>
    <message>
        <source>Eased by sitting or leaning forward</source>
        <translation>Alivia al sentarse o inclinarse hacia delante</translation>
    </message>
    <message>
        <source>Eased by lying down</source>
        <translation>Alivia al tumbarse</translation>
    </message>
    <message>
        <source>Leg pain on walking eases on standing still, upright</source>
        <translation>El dolor de pierna al caminar cede al pararse erguido</translation>
    </message>
    <message>
        <source>Wakes at night, not eased by changing position</source>
        <translation>Despierta de noche, no alivia al cambiar de postura</translation>
    </message>
    <message>
        <source>Habit of leg crossing, kneeling, squatting, or recent cast or knee brace</source>
        <translation>Hábito de cruzar las piernas, arrodillarse o agacharse, o yeso o rodillera recientes</translation>
    </message>
    <message>
        <source>Tight belt, rapid weight gain, or recent prone positioning</source>
        <translation>Cinturón apretado, aumento rápido de peso o decúbito prono reciente</translation>
    </message>
    <message>
        <source>Walking distance before stopping</source>
        <translation>Distancia caminada antes de parar</translation>
    </message>
    <message>
        <source>Bladder: start, flow or feeling of fullness</source>
        <translation>Vejiga: inicio, chorro o sensación de llenado</translation>
    </message>
    <message>
        <source>Altered</source>
        <translation>Alterado</translation>
    </message>
    <message>
        <source>Retention</source>
        <translation>Retención</translation>
    </message>
    <message>
        <source>Leaks</source>
        <translation>Pérdidas</translation>
    </message>
    <message>
        <source>Long-standing, unchanged</source>
        <translation>De larga data, sin cambios</translation>
    </message>
    <message>
        <source>Bowel</source>
        <translation>Intestino</translation>
    </message>
    <message>
        <source>Altered or constipated</source>
        <translation>Alterado o estreñido</translation>
    </message>
    <message>
        <source>Cannot feel a full rectum</source>
        <translation>No nota el recto lleno</translation>
    </message>
    <message>
        <source>Numb, tingling or different between the legs</source>
        <translation>Adormecido, con hormigueo o distinto entre las piernas</translation>
    </message>
    <message>
        <source>Change in sexual function</source>
        <translation>Cambio en la función sexual</translation>
    </message>
    <message>
        <source>Symptoms in both legs</source>
        <translation>Síntomas en ambas piernas</translation>
    </message>
    <message>
        <source>Weakness getting worse over days or weeks</source>
        <translation>Debilidad que empeora en días o semanas</translation>
    </message>
    <message>
        <source>Weeks since the weakness began</source>
        <translation>Semanas desde el inicio de la debilidad</translation>
    </message>
    <message>
        <source>Trouble breathing or swallowing</source>
        <translation>Dificultad para respirar o tragar</translation>
    </message>
    <message>
        <source>New droop of the face, slurred speech or weak arm</source>
        <translation>Caída facial, habla arrastrada o brazo débil nuevos</translation>
    </message>
    <message>
        <source>Cancer other than minor skin cancer, now or before</source>
        <translation>Cáncer distinto del cutáneo leve, ahora o antes</translation>
    </message>
    <message>
        <source>When the cancer was</source>
        <translation>Cuándo fue el cáncer</translation>
    </message>
    <message>
        <source>Active now</source>
        <translation>Activo ahora</translation>
    </message>
    <message>
        <source>Within 10 years</source>
        <translation>Hace menos de 10 años</translation>
    </message>
    <message>
        <source>Longer ago</source>
        <translation>Hace más tiempo</translation>
    </message>
    <message>
        <source>Unexplained weight loss</source>
        <translation>Pérdida de peso sin explicación</translation>
    </message>
    <message>
        <source>Fever or rigors</source>
        <translation>Fiebre o escalofríos</translation>
    </message>
    <message>
        <source>Sweats without fever</source>
        <translation>Sudoración sin fiebre</translation>
    </message>
    <message>
        <source>Recent infection (last 3 months)</source>
        <translation>Infección reciente (últimos 3 meses)</translation>
    </message>
    <message>
        <source>Spinal injection, puncture or surgery (last 3 months)</source>
        <translation>Inyección, punción o cirugía espinal (últimos 3 meses)</translation>
    </message>
    <message>
        <source>Injected drug use</source>
        <translation>Drogas inyectadas</translation>
    </message>
    <message>
        <source>Immunosuppressed</source>
        <translation>Inmunosupresión</translation>
    </message>
    <message>
        <source>Prolonged corticosteroids</source>
        <translation>Corticoides prolongados</translation>
    </message>
    <message>
        <source>Known osteoporosis</source>
        <translation>Osteoporosis conocida</translation>
    </message>
    <message>
        <source>Spine known to be stiffened by ankylosing disease</source>
        <translation>Columna rígida por enfermedad anquilosante conocida</translation>
    </message>
    <message>
        <source>Anticoagulant or antiplatelet treatment</source>
        <translation>Anticoagulante o antiagregante</translation>
    </message>
    <message>
        <source>Known aortic aneurysm</source>
        <translation>Aneurisma de aorta conocido</translation>
    </message>
    <message>
        <source>Smoker, now or before</source>
        <translation>Fumador, ahora o antes</translation>
    </message>
    <message>
        <source>Diabetes</source>
        <translation>Diabetes</translation>
    </message>
    <message>
        <source>Heavy alcohol use</source>
        <translation>Consumo elevado de alcohol</translation>
    </message>
    <message>
        <source>Known arterial disease</source>
        <translation>Enfermedad arterial conocida</translation>
    </message>
    <message>
        <source>Foot pain at rest, eased by hanging the leg down</source>
        <translation>Dolor del pie en reposo, alivia al colgar la pierna</translation>
    </message>
    <message>
        <source>Previous spine surgery</source>
        <translation>Cirugía de columna previa</translation>
    </message>
    <message>
        <source>Recent hip, knee or pelvic surgery or childbirth</source>
        <translation>Cirugía de cadera, rodilla o pelvis o parto recientes</translation>
    </message>
    <message>
        <source>Known pelvic or retroperitoneal mass or bleed</source>
        <translation>Masa o hemorragia pélvica o retroperitoneal conocida</translation>
    </message>
    <message>
        <source>Recent blistering rash</source>
        <translation>Erupción reciente con ampollas</translation>
    </message>
    <message>
        <source>Back pain began before age 40</source>
        <translation>El dolor de espalda empezó antes de los 40 años</translation>
    </message>
    <message>
        <source>Crept on</source>
        <translation>Inicio insidioso</translation>
    </message>
    <message>
        <source>Better with exercise</source>
        <translation>Mejora con el ejercicio</translation>
    </message>
    <message>
        <source>No better with rest</source>
        <translation>No mejora con el reposo</translation>
    </message>
    <message>
        <source>Night pain that eases on getting up</source>
        <translation>Dolor nocturno que alivia al levantarse</translation>
    </message>
    <message>
        <source>Uveitis, psoriasis or inflammatory bowel disease</source>
        <translation>Uveítis, psoriasis o enfermedad inflamatoria intestinal</translation>
    </message>
    <message>
        <source>Which of them</source>
        <translation>Cuál de ellas</translation>
    </message>
    <message>
        <source>Uveitis</source>
        <translation>Uveítis</translation>
    </message>
    <message>
        <source>Psoriasis</source>
        <translation>Psoriasis</translation>
    </message>
    <message>
        <source>Bowel disease</source>
        <translation>Enfermedad intestinal</translation>
    </message>
    <message>
        <source>Several</source>
        <translation>Varias</translation>
    </message>
    <message>
        <source>Spondyloarthritis in the family</source>
        <translation>Espondiloartritis en la familia</translation>
    </message>
    <message>
        <source>Morning stiffness</source>
        <translation>Rigidez matutina</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatura</translation>
    </message>
    <message>
        <source>Heart rate</source>
        <translation>Frecuencia cardíaca</translation>
    </message>
    <message>
        <source>Systolic blood pressure</source>
        <translation>Presión arterial sistólica</translation>
    </message>
    <message>
        <source>Diastolic blood pressure</source>
        <translation>Presión arterial diastólica</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Estatura</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>Roland-Morris total</source>
        <translation>Roland-Morris, total</translation>
    </message>
    <message>
        <source>Oswestry total (percent)</source>
        <translation>Oswestry, total (por ciento)</translation>
    </message>
    <message>
        <source>PROMIS pain interference (T-score)</source>
        <translation>PROMIS interferencia del dolor (puntuación T)</translation>
    </message>
    <message>
        <source>An activity that matters to the patient (1)</source>
        <translation>Una actividad importante para el paciente (1)</translation>
    </message>
    <message>
        <source>Ability for activity 1 (0 unable, 10 as before)</source>
        <translation>Capacidad para la actividad 1 (0 imposible, 10 como antes)</translation>
    </message>
    <message>
        <source>An activity that matters to the patient (2)</source>
        <translation>Una actividad importante para el paciente (2)</translation>
    </message>
    <message>
        <source>Ability for activity 2 (0 unable, 10 as before)</source>
        <translation>Capacidad para la actividad 2 (0 imposible, 10 como antes)</translation>
    </message>
    <message>
        <source>An activity that matters to the patient (3)</source>
        <translation>Una actividad importante para el paciente (3)</translation>
    </message>
    <message>
        <source>Ability for activity 3 (0 unable, 10 as before)</source>
        <translation>Capacidad para la actividad 3 (0 imposible, 10 como antes)</translation>
    </message>
    <message>
        <source>Residual after voiding</source>
        <translation>Residuo posmiccional</translation>
    </message>
    <message>
        <source>Comfort at rest</source>
        <translation>Comodidad en reposo</translation>
    </message>
    <message>
        <source>Comfortable</source>
        <translation>Cómodo</translation>
    </message>
    <message>
        <source>Uncomfortable</source>
        <translation>Incómodo</translation>
    </message>
    <message>
        <source>Marked distress</source>
        <translation>Malestar intenso</translation>
    </message>
    <message>
        <source>Skin folds</source>
        <translation>Pliegues cutáneos</translation>
    </message>
    <message>
        <source>Symmetric</source>
        <translation>Simétricos</translation>
    </message>
    <message>
        <source>Asymmetric</source>
        <translation>Asimétricos</translation>
    </message>
    <message>
        <source>Shoulders</source>
        <translation>Hombros</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Nivelados</translation>
    </message>
    <message>
        <source>Right high</source>
        <translation>Derecho más alto</translation>
    </message>
    <message>
        <source>Left high</source>
        <translation>Izquierdo más alto</translation>
    </message>
    <message>
        <source>Iliac crests</source>
        <translation>Crestas ilíacas</translation>
    </message>
    <message>
        <source>Block height that levels the crests</source>
        <translation>Altura del alza que nivela las crestas</translation>
    </message>
    <message>
        <source>Lateral shift of the trunk</source>
        <translation>Desviación lateral del tronco</translation>
    </message>
    <message>
        <source>To right</source>
        <translation>A la derecha</translation>
    </message>
    <message>
        <source>To left</source>
        <translation>A la izquierda</translation>
    </message>
    <message>
        <source>Lumbar curve</source>
        <translation>Curva lumbar</translation>
    </message>
    <message>
        <source>Flattened</source>
        <translation>Aplanada</translation>
    </message>
    <message>
        <source>Increased</source>
        <translation>Aumentada</translation>
    </message>
    <message>
        <source>Skin over the back and leg</source>
        <translation>Piel de la espalda y la pierna</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Sin lesiones</translation>
    </message>
    <message>
        <source>Scar</source>
        <translation>Cicatriz</translation>
    </message>
    <message>
        <source>Midline mark</source>
        <translation>Marca en la línea media</translation>
    </message>
    <message>
        <source>Vesicles</source>
        <translation>Vesículas</translation>
    </message>
    <message>
        <source>Bruise or graze over the spine</source>
        <translation>Hematoma o rozadura sobre la columna</translation>
    </message>
    <message>
        <source>Blisters or scabs along</source>
        <translation>Ampollas o costras a lo largo de</translation>
    </message>
    <message>
        <source>Groin upper thigh</source>
        <translation>Ingle y muslo superior</translation>
    </message>
    <message>
        <source>Front thigh knee</source>
        <translation>Muslo anterior y rodilla</translation>
    </message>
    <message>
        <source>Inner leg</source>
        <translation>Cara interna de la pierna</translation>
    </message>
    <message>
        <source>Outer leg foot top</source>
        <translation>Cara externa y dorso del pie</translation>
    </message>
    <message>
        <source>Back of leg outer foot</source>
        <translation>Cara posterior y borde externo del pie</translation>
    </message>
    <message>
        <source>Buttock saddle</source>
        <translation>Glúteo y silla</translation>
    </message>
    <message>
        <source>Muscle wasting</source>
        <translation>Atrofia muscular</translation>
    </message>
    <message>
        <source>Calf</source>
        <translation>Pantorrilla</translation>
    </message>
    <message>
        <source>Anterior leg</source>
        <translation>Pierna anterior</translation>
    </message>
    <message>
        <source>Thigh</source>
        <translation>Muslo</translation>
    </message>
    <message>
        <source>Buttock</source>
        <translation>Glúteo</translation>
    </message>
    <message>
        <source>Calf swollen, warm or tender</source>
        <translation>Pantorrilla hinchada, caliente o dolorosa</translation>
    </message>
    <message>
        <source>Chest expansion</source>
        <translation>Expansión torácica</translation>
    </message>
    <message>
        <source>Fingertips to floor, bending forward</source>
        <translation>Distancia dedos-suelo</translation>
    </message>
    <message>
        <source>Modified Schober gain</source>
        <translation>Schober modificado</translation>
    </message>
    <message>
        <source>Forward bend</source>
        <translation>Flexión anterior</translation>
    </message>
    <message>
        <source>Forward bend: pain</source>
        <translation>Flexión anterior: dolor</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Espalda</translation>
    </message>
    <message>
        <source>Leg</source>
        <translation>Pierna</translation>
    </message>
    <message>
        <source>Backward bend</source>
        <translation>Extensión</translation>
    </message>
    <message>
        <source>Backward bend: pain</source>
        <translation>Extensión: dolor</translation>
    </message>
    <message>
        <source>Side bend</source>
        <translation>Inclinación lateral</translation>
    </message>
    <message>
        <source>Side bend: pain</source>
        <translation>Inclinación lateral: dolor</translation>
    </message>
    <message>
        <source>Rotation</source>
        <translation>Rotación</translation>
    </message>
    <message>
        <source>Rotation: pain</source>
        <translation>Rotación: dolor</translation>
    </message>
    <message>
        <source>Rib or loin hump on bending</source>
        <translation>Giba costal o lumbar al inclinarse</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Derecha</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Izquierda</translation>
    </message>
    <message>
        <source>Trunk inclination</source>
        <translation>Inclinación del tronco</translation>
    </message>
    <message>
        <source>Coming back up from the bend</source>
        <translation>Recuperación desde la flexión</translation>
    </message>
    <message>
        <source>Smooth</source>
        <translation>Fluida</translation>
    </message>
    <message>
        <source>Hands on thighs</source>
        <translation>Manos en los muslos</translation>
    </message>
    <message>
        <source>Sway back</source>
        <translation>Con balanceo</translation>
    </message>
    <message>
        <source>Painful catch</source>
        <translation>Bloqueo doloroso</translation>
    </message>
    <message>
        <source>Paraspinal muscle tone</source>
        <translation>Tono paravertebral</translation>
    </message>
    <message>
        <source>Soft</source>
        <translation>Blando</translation>
    </message>
    <message>
        <source>Firm</source>
        <translation>Firme</translation>
    </message>
    <message>
        <source>Hard</source>
        <translation>Duro</translation>
    </message>
    <message>
        <source>Midline tenderness</source>
        <translation>Dolor a la presión en la línea media</translation>
    </message>
    <message>
        <source>Upper lumbar</source>
        <translation>Lumbar superior</translation>
    </message>
    <message>
        <source>Lower lumbar</source>
        <translation>Lumbar inferior</translation>
    </message>
    <message>
        <source>Lumbosacral</source>
        <translation>Lumbosacra</translation>
    </message>
    <message>
        <source>Diffuse</source>
        <translation>Difusa</translation>
    </message>
    <message>
        <source>Percussion tenderness of the spine</source>
        <translation>Dolor a la percusión de la columna</translation>
    </message>
    <message>
        <source>Palpable step</source>
        <translation>Escalón palpable</translation>
    </message>
    <message>
        <source>Tender over the posterior superior iliac spine</source>
        <translation>Dolor sobre la espina ilíaca posterosuperior</translation>
    </message>
    <message>
        <source>Tender over the greater trochanter</source>
        <translation>Dolor sobre el trocánter mayor</translation>
    </message>
    <message>
        <source>Tender to light touch over a wide area</source>
        <translation>Dolor al tacto ligero en área extensa</translation>
    </message>
    <message>
        <source>Deep tenderness crossing anatomical borders</source>
        <translation>Dolor profundo que cruza límites anatómicos</translation>
    </message>
    <message>
        <source>Back pain on light pressure on the head</source>
        <translation>Dolor de espalda al presionar levemente la cabeza</translation>
    </message>
    <message>
        <source>Back pain when shoulders and pelvis turn together</source>
        <translation>Dolor de espalda al girar juntos hombros y pelvis</translation>
    </message>
    <message>
        <source>Weak hip extension returns when the other leg lifts</source>
        <translation>La extensión débil de cadera vuelve al elevar la otra pierna</translation>
    </message>
    <message>
        <source>Disproportionate reaction during the examination</source>
        <translation>Reacción desproporcionada durante la exploración</translation>
    </message>
    <message>
        <source>Giving way across many muscle groups, without a neurological pattern</source>
        <translation>Claudicación de muchos grupos musculares sin patrón neurológico</translation>
    </message>
    <message>
        <source>Sensory change of a whole leg or half the body, fitting no root, nerve or length</source>
        <translation>Cambio sensitivo de toda una pierna o medio cuerpo, sin patrón de raíz, nervio o longitud</translation>
    </message>
    <message>
        <source>Walking pattern</source>
        <translation>Patrón de marcha</translation>
    </message>
    <message>
        <source>Antalgic</source>
        <translation>Antálgica</translation>
    </message>
    <message>
        <source>Foot slap</source>
        <translation>Pie que golpea</translation>
    </message>
    <message>
        <source>Steppage</source>
        <translation>Estepaje</translation>
    </message>
    <message>
        <source>Trendelenburg</source>
        <translation>Trendelenburg</translation>
    </message>
    <message>
        <source>Stooped</source>
        <translation>Encorvada</translation>
    </message>
    <message>
        <source>Wide based</source>
        <translation>De base ancha</translation>
    </message>
    <message>
        <source>Spastic</source>
        <translation>Espástica</translation>
    </message>
    <message>
        <source>Scissor</source>
        <translation>En tijera</translation>
    </message>
    <message>
        <source>Foot slaps or drops</source>
        <translation>El pie golpea o cae</translation>
    </message>
    <message>
        <source>Limp</source>
        <translation>Cojera</translation>
    </message>
    <message>
        <source>Walks on the heel</source>
        <translation>Marcha de talón</translation>
    </message>
    <message>
        <source>Walks on the toes</source>
        <translation>Marcha de puntillas</translation>
    </message>
    <message>
        <source>Single-leg heel raises</source>
        <translation>Elevaciones de talón a una pierna</translation>
    </message>
    <message>
        <source>Rises from a chair on one leg</source>
        <translation>Se levanta de la silla con una pierna</translation>
    </message>
    <message>
        <source>Squats and rises</source>
        <translation>Se agacha y se levanta</translation>
    </message>
    <message>
        <source>Hopping on this leg is sharply painful</source>
        <translation>Saltar sobre esta pierna produce dolor agudo</translation>
    </message>
    <message>
        <source>Pelvis drops when standing on this leg</source>
        <translation>La pelvis cae al apoyarse en esta pierna</translation>
    </message>
    <message>
        <source>Heel-to-toe walking</source>
        <translation>Marcha en tándem</translation>
    </message>
    <message>
        <source>Sways with the eyes closed</source>
        <translation>Oscila con los ojos cerrados (Romberg)</translation>
    </message>
    <message>
        <source>Knee reflex</source>
        <translation>Reflejo rotuliano</translation>
    </message>
    <message>
        <source>Knee</source>
        <translation>Rotuliano</translation>
    </message>
    <message>
        <source>Ankle reflex</source>
        <translation>Reflejo aquíleo</translation>
    </message>
    <message>
        <source>Ankle</source>
        <translation>Aquíleo</translation>
    </message>
    <message>
        <source>Medial hamstring reflex</source>
        <translation>Reflejo isquiotibial medial</translation>
    </message>
    <message>
        <source>Medial hamstring</source>
        <translation>Isquiotibial medial</translation>
    </message>
    <message>
        <source>Adductor reflex</source>
        <translation>Reflejo aductor</translation>
    </message>
    <message>
        <source>Adductor</source>
        <translation>Aductor</translation>
    </message>
    <message>
        <source>Reinforcement used (hooked fingers, pull)</source>
        <translation>Refuerzo empleado (maniobra de Jendrassik)</translation>
    </message>
    <message>
        <source>Plantar response</source>
        <translation>Reflejo cutáneo plantar</translation>
    </message>
    <message>
        <source>Sustained ankle clonus</source>
        <translation>Clonus aquíleo sostenido</translation>
    </message>
    <message>
        <source>Leg tone</source>
        <translation>Tono de la pierna</translation>
    </message>
    <message>
        <source>Flaccid</source>
        <translation>Flácido</translation>
    </message>
    <message>
        <source>Hip flexion</source>
        <translation>Flexión de cadera</translation>
    </message>
    <message>
        <source>Hip adduction</source>
        <translation>Aducción de cadera</translation>
    </message>
    <message>
        <source>Knee extension</source>
        <translation>Extensión de rodilla</translation>
    </message>
    <message>
        <source>Knee flexion</source>
        <translation>Flexión de rodilla</translation>
    </message>
    <message>
        <source>Ankle dorsiflexion</source>
        <translation>Dorsiflexión del tobillo</translation>
    </message>
    <message>
        <source>Great-toe extension</source>
        <translation>Extensión del dedo gordo</translation>
    </message>
    <message>
        <source>Lesser-toe extension</source>
        <translation>Extensión de los dedos menores</translation>
    </message>
    <message>
        <source>Foot inversion</source>
        <translation>Inversión del pie</translation>
    </message>
    <message>
        <source>Foot eversion</source>
        <translation>Eversión del pie</translation>
    </message>
    <message>
        <source>Ankle plantarflexion</source>
        <translation>Flexión plantar del tobillo</translation>
    </message>
    <message>
        <source>Toe flexion</source>
        <translation>Flexión de los dedos</translation>
    </message>
    <message>
        <source>Hip abduction</source>
        <translation>Abducción de cadera</translation>
    </message>
    <message>
        <source>Hip extension</source>
        <translation>Extensión de cadera</translation>
    </message>
    <message>
        <source>Strength gives way rather than yields</source>
        <translation>La fuerza cede bruscamente</translation>
    </message>
    <message>
        <source>Pain limits the effort on this side</source>
        <translation>El dolor limita el esfuerzo de este lado</translation>
    </message>
    <message>
        <source>Dorsalis pedis pulse</source>
        <translation>Pulso pedio</translation>
    </message>
    <message>
        <source>Dorsalis pedis</source>
        <translation>Pedio</translation>
    </message>
    <message>
        <source>Posterior tibial pulse</source>
        <translation>Pulso tibial posterior</translation>
    </message>
    <message>
        <source>Posterior tibial</source>
        <translation>Tibial posterior</translation>
    </message>
    <message>
        <source>Femoral pulse</source>
        <translation>Pulso femoral</translation>
    </message>
    <message>
        <source>Femoral</source>
        <translation>Femoral</translation>
    </message>
    <message>
        <source>Ankle-brachial index</source>
        <translation>Índice tobillo-brazo</translation>
    </message>
    <message>
        <source>Leg cold or pale against the other</source>
        <translation>Pierna fría o pálida respecto a la otra</translation>
    </message>
    <message>
        <source>Ulcer or gangrene of the foot</source>
        <translation>Úlcera o gangrena del pie</translation>
    </message>
    <message>
        <source>Vibration at the great toe</source>
        <translation>Vibración en el dedo gordo</translation>
    </message>
    <message>
        <source>Joint position at the great toe</source>
        <translation>Posición articular del dedo gordo</translation>
    </message>
    <message>
        <source>Tapping the fibular neck tingles down the leg</source>
        <translation>Percutir el cuello del peroné da hormigueo en la pierna (Tinel)</translation>
    </message>
    <message>
        <source>Tapping behind the medial malleolus tingles into the sole</source>
        <translation>Percutir tras el maléolo interno da hormigueo en la planta (Tinel)</translation>
    </message>
    <message>
        <source>Tapping medial to the front hip bone tingles into the outer thigh</source>
        <translation>Percutir medial a la espina ilíaca anterior da hormigueo en el muslo externo (Tinel)</translation>
    </message>
    <message>
        <source>Groin and inguinal crease: light touch</source>
        <translation>Ingle y pliegue inguinal: tacto ligero</translation>
    </message>
    <message>
        <source>Groin and inguinal crease</source>
        <translation>Ingle y pliegue inguinal</translation>
    </message>
    <message>
        <source>Upper outer thigh, front: light touch</source>
        <translation>Muslo superior externo, anterior: tacto ligero</translation>
    </message>
    <message>
        <source>Upper outer thigh, front</source>
        <translation>Muslo superior externo, anterior</translation>
    </message>
    <message>
        <source>Upper inner thigh: light touch</source>
        <translation>Muslo superior interno: tacto ligero</translation>
    </message>
    <message>
        <source>Upper inner thigh</source>
        <translation>Muslo superior interno</translation>
    </message>
    <message>
        <source>Middle of the front thigh: light touch</source>
        <translation>Centro del muslo anterior: tacto ligero</translation>
    </message>
    <message>
        <source>Middle of the front thigh</source>
        <translation>Centro del muslo anterior</translation>
    </message>
    <message>
        <source>Lower inner thigh and inner knee: light touch</source>
        <translation>Muslo inferior interno y rodilla interna: tacto ligero</translation>
    </message>
    <message>
        <source>Lower inner thigh and inner knee</source>
        <translation>Muslo inferior interno y rodilla interna</translation>
    </message>
    <message>
        <source>Outer thigh: light touch</source>
        <translation>Muslo externo: tacto ligero</translation>
    </message>
    <message>
        <source>Outer thigh</source>
        <translation>Muslo externo</translation>
    </message>
    <message>
        <source>Front of the knee: light touch</source>
        <translation>Cara anterior de la rodilla: tacto ligero</translation>
    </message>
    <message>
        <source>Front of the knee</source>
        <translation>Cara anterior de la rodilla</translation>
    </message>
    <message>
        <source>Inner shin: light touch</source>
        <translation>Espinilla interna: tacto ligero</translation>
    </message>
    <message>
        <source>Inner shin</source>
        <translation>Espinilla interna</translation>
    </message>
    <message>
        <source>Inner ankle: light touch</source>
        <translation>Tobillo interno: tacto ligero</translation>
    </message>
    <message>
        <source>Inner ankle</source>
        <translation>Tobillo interno</translation>
    </message>
    <message>
        <source>Outer shin: light touch</source>
        <translation>Espinilla externa: tacto ligero</translation>
    </message>
    <message>
        <source>Outer shin</source>
        <translation>Espinilla externa</translation>
    </message>
    <message>
        <source>Top of the foot, inner part: light touch</source>
        <translation>Dorso del pie, parte interna: tacto ligero</translation>
    </message>
    <message>
        <source>Top of the foot, inner part</source>
        <translation>Dorso del pie, parte interna</translation>
    </message>
    <message>
        <source>Top of the foot, centre: light touch</source>
        <translation>Dorso del pie, centro: tacto ligero</translation>
    </message>
    <message>
        <source>Top of the foot, centre</source>
        <translation>Dorso del pie, centro</translation>
    </message>
    <message>
        <source>Top of the foot, outer edge: light touch</source>
        <translation>Dorso del pie, borde externo: tacto ligero</translation>
    </message>
    <message>
        <source>Top of the foot, outer edge</source>
        <translation>Dorso del pie, borde externo</translation>
    </message>
    <message>
        <source>First web space: light touch</source>
        <translation>Primer espacio interdigital: tacto ligero</translation>
    </message>
    <message>
        <source>First web space</source>
        <translation>Primer espacio interdigital</translation>
    </message>
    <message>
        <source>Great toe: light touch</source>
        <translation>Dedo gordo: tacto ligero</translation>
    </message>
    <message>
        <source>Great toe</source>
        <translation>Dedo gordo</translation>
    </message>
    <message>
        <source>Second to fourth toes: light touch</source>
        <translation>Dedos segundo a cuarto: tacto ligero</translation>
    </message>
    <message>
        <source>Second to fourth toes</source>
        <translation>Dedos segundo a cuarto</translation>
    </message>
    <message>
        <source>Little toe: light touch</source>
        <translation>Dedo pequeño: tacto ligero</translation>
    </message>
    <message>
        <source>Little toe</source>
        <translation>Dedo pequeño</translation>
    </message>
    <message>
        <source>Outer ankle: light touch</source>
        <translation>Tobillo externo: tacto ligero</translation>
    </message>
    <message>
        <source>Outer ankle</source>
        <translation>Tobillo externo</translation>
    </message>
    <message>
        <source>Heel from behind, outer side: light touch</source>
        <translation>Talón por detrás, lado externo: tacto ligero</translation>
    </message>
    <message>
        <source>Heel from behind, outer side</source>
        <translation>Talón por detrás, lado externo</translation>
    </message>
    <message>
        <source>Inner calf: light touch</source>
        <translation>Pantorrilla interna: tacto ligero</translation>
    </message>
    <message>
        <source>Inner calf</source>
        <translation>Pantorrilla interna</translation>
    </message>
    <message>
        <source>Back of the calf: light touch</source>
        <translation>Pantorrilla posterior: tacto ligero</translation>
    </message>
    <message>
        <source>Back of the calf</source>
        <translation>Pantorrilla posterior</translation>
    </message>
    <message>
        <source>Outer calf: light touch</source>
        <translation>Pantorrilla externa: tacto ligero</translation>
    </message>
    <message>
        <source>Outer calf</source>
        <translation>Pantorrilla externa</translation>
    </message>
    <message>
        <source>Hollow behind the knee: light touch</source>
        <translation>Hueco poplíteo: tacto ligero</translation>
    </message>
    <message>
        <source>Hollow behind the knee</source>
        <translation>Hueco poplíteo</translation>
    </message>
    <message>
        <source>Back of the thigh: light touch</source>
        <translation>Muslo posterior: tacto ligero</translation>
    </message>
    <message>
        <source>Back of the thigh</source>
        <translation>Muslo posterior</translation>
    </message>
    <message>
        <source>Upper buttock: light touch</source>
        <translation>Glúteo superior: tacto ligero</translation>
    </message>
    <message>
        <source>Upper buttock</source>
        <translation>Glúteo superior</translation>
    </message>
    <message>
        <source>Lower buttock and fold: light touch</source>
        <translation>Glúteo inferior y pliegue: tacto ligero</translation>
    </message>
    <message>
        <source>Lower buttock and fold</source>
        <translation>Glúteo inferior y pliegue</translation>
    </message>
    <message>
        <source>Low back: light touch</source>
        <translation>Zona lumbar: tacto ligero</translation>
    </message>
    <message>
        <source>Low back</source>
        <translation>Zona lumbar</translation>
    </message>
    <message>
        <source>Sole, inner part: light touch</source>
        <translation>Planta, parte interna: tacto ligero</translation>
    </message>
    <message>
        <source>Sole, inner part</source>
        <translation>Planta, parte interna</translation>
    </message>
    <message>
        <source>Sole, outer part: light touch</source>
        <translation>Planta, parte externa: tacto ligero</translation>
    </message>
    <message>
        <source>Sole, outer part</source>
        <translation>Planta, parte externa</translation>
    </message>
    <message>
        <source>Heel pad: light touch</source>
        <translation>Almohadilla del talón: tacto ligero</translation>
    </message>
    <message>
        <source>Heel pad</source>
        <translation>Almohadilla del talón</translation>
    </message>
    <message>
        <source>Around the genitals: light touch</source>
        <translation>Alrededor de los genitales: tacto ligero</translation>
    </message>
    <message>
        <source>Around the genitals</source>
        <translation>Alrededor de los genitales</translation>
    </message>
    <message>
        <source>Around the anus: light touch</source>
        <translation>Alrededor del ano: tacto ligero</translation>
    </message>
    <message>
        <source>Around the anus</source>
        <translation>Alrededor del ano</translation>
    </message>
    <message>
        <source>Inner buttock, saddle area: light touch</source>
        <translation>Glúteo interno, silla de montar: tacto ligero</translation>
    </message>
    <message>
        <source>Inner buttock, saddle area</source>
        <translation>Glúteo interno, silla de montar</translation>
    </message>
    <message>
        <source>Groin and inguinal crease: pinprick</source>
        <translation>Ingle y pliegue inguinal: pinchazo</translation>
    </message>
    <message>
        <source>Upper outer thigh, front: pinprick</source>
        <translation>Muslo superior externo, anterior: pinchazo</translation>
    </message>
    <message>
        <source>Upper inner thigh: pinprick</source>
        <translation>Muslo superior interno: pinchazo</translation>
    </message>
    <message>
        <source>Middle of the front thigh: pinprick</source>
        <translation>Centro del muslo anterior: pinchazo</translation>
    </message>
    <message>
        <source>Lower inner thigh and inner knee: pinprick</source>
        <translation>Muslo inferior interno y rodilla interna: pinchazo</translation>
    </message>
    <message>
        <source>Outer thigh: pinprick</source>
        <translation>Muslo externo: pinchazo</translation>
    </message>
    <message>
        <source>Front of the knee: pinprick</source>
        <translation>Cara anterior de la rodilla: pinchazo</translation>
    </message>
    <message>
        <source>Inner shin: pinprick</source>
        <translation>Espinilla interna: pinchazo</translation>
    </message>
    <message>
        <source>Inner ankle: pinprick</source>
        <translation>Tobillo interno: pinchazo</translation>
    </message>
    <message>
        <source>Outer shin: pinprick</source>
        <translation>Espinilla externa: pinchazo</translation>
    </message>
    <message>
        <source>Top of the foot, inner part: pinprick</source>
        <translation>Dorso del pie, parte interna: pinchazo</translation>
    </message>
    <message>
        <source>Top of the foot, centre: pinprick</source>
        <translation>Dorso del pie, centro: pinchazo</translation>
    </message>
    <message>
        <source>Top of the foot, outer edge: pinprick</source>
        <translation>Dorso del pie, borde externo: pinchazo</translation>
    </message>
    <message>
        <source>First web space: pinprick</source>
        <translation>Primer espacio interdigital: pinchazo</translation>
    </message>
    <message>
        <source>Great toe: pinprick</source>
        <translation>Dedo gordo: pinchazo</translation>
    </message>
    <message>
        <source>Second to fourth toes: pinprick</source>
        <translation>Dedos segundo a cuarto: pinchazo</translation>
    </message>
    <message>
        <source>Little toe: pinprick</source>
        <translation>Dedo pequeño: pinchazo</translation>
    </message>
    <message>
        <source>Outer ankle: pinprick</source>
        <translation>Tobillo externo: pinchazo</translation>
    </message>
    <message>
        <source>Heel from behind, outer side: pinprick</source>
        <translation>Talón por detrás, lado externo: pinchazo</translation>
    </message>
    <message>
        <source>Inner calf: pinprick</source>
        <translation>Pantorrilla interna: pinchazo</translation>
    </message>
    <message>
        <source>Back of the calf: pinprick</source>
        <translation>Pantorrilla posterior: pinchazo</translation>
    </message>
    <message>
        <source>Outer calf: pinprick</source>
        <translation>Pantorrilla externa: pinchazo</translation>
    </message>
    <message>
        <source>Hollow behind the knee: pinprick</source>
        <translation>Hueco poplíteo: pinchazo</translation>
    </message>
    <message>
        <source>Back of the thigh: pinprick</source>
        <translation>Muslo posterior: pinchazo</translation>
    </message>
    <message>
        <source>Upper buttock: pinprick</source>
        <translation>Glúteo superior: pinchazo</translation>
    </message>
    <message>
        <source>Lower buttock and fold: pinprick</source>
        <translation>Glúteo inferior y pliegue: pinchazo</translation>
    </message>
    <message>
        <source>Low back: pinprick</source>
        <translation>Zona lumbar: pinchazo</translation>
    </message>
    <message>
        <source>Sole, inner part: pinprick</source>
        <translation>Planta, parte interna: pinchazo</translation>
    </message>
    <message>
        <source>Sole, outer part: pinprick</source>
        <translation>Planta, parte externa: pinchazo</translation>
    </message>
    <message>
        <source>Heel pad: pinprick</source>
        <translation>Almohadilla del talón: pinchazo</translation>
    </message>
    <message>
        <source>Around the genitals: pinprick</source>
        <translation>Alrededor de los genitales: pinchazo</translation>
    </message>
    <message>
        <source>Around the anus: pinprick</source>
        <translation>Alrededor del ano: pinchazo</translation>
    </message>
    <message>
        <source>Inner buttock, saddle area: pinprick</source>
        <translation>Glúteo interno, silla de montar: pinchazo</translation>
    </message>
    <message>
        <source>Groin and inguinal crease: marked by the patient</source>
        <translation>Ingle y pliegue inguinal: marcado por el paciente</translation>
    </message>
    <message>
        <source>Upper outer thigh, front: marked by the patient</source>
        <translation>Muslo superior externo, anterior: marcado por el paciente</translation>
    </message>
    <message>
        <source>Upper inner thigh: marked by the patient</source>
        <translation>Muslo superior interno: marcado por el paciente</translation>
    </message>
    <message>
        <source>Middle of the front thigh: marked by the patient</source>
        <translation>Centro del muslo anterior: marcado por el paciente</translation>
    </message>
    <message>
        <source>Lower inner thigh and inner knee: marked by the patient</source>
        <translation>Muslo inferior interno y rodilla interna: marcado por el paciente</translation>
    </message>
    <message>
        <source>Outer thigh: marked by the patient</source>
        <translation>Muslo externo: marcado por el paciente</translation>
    </message>
    <message>
        <source>Front of the knee: marked by the patient</source>
        <translation>Cara anterior de la rodilla: marcado por el paciente</translation>
    </message>
    <message>
        <source>Inner shin: marked by the patient</source>
        <translation>Espinilla interna: marcado por el paciente</translation>
    </message>
    <message>
        <source>Inner ankle: marked by the patient</source>
        <translation>Tobillo interno: marcado por el paciente</translation>
    </message>
    <message>
        <source>Outer shin: marked by the patient</source>
        <translation>Espinilla externa: marcado por el paciente</translation>
    </message>
    <message>
        <source>Top of the foot, inner part: marked by the patient</source>
        <translation>Dorso del pie, parte interna: marcado por el paciente</translation>
    </message>
    <message>
        <source>Top of the foot, centre: marked by the patient</source>
        <translation>Dorso del pie, centro: marcado por el paciente</translation>
    </message>
    <message>
        <source>Top of the foot, outer edge: marked by the patient</source>
        <translation>Dorso del pie, borde externo: marcado por el paciente</translation>
    </message>
    <message>
        <source>First web space: marked by the patient</source>
        <translation>Primer espacio interdigital: marcado por el paciente</translation>
    </message>
    <message>
        <source>Great toe: marked by the patient</source>
        <translation>Dedo gordo: marcado por el paciente</translation>
    </message>
    <message>
        <source>Second to fourth toes: marked by the patient</source>
        <translation>Dedos segundo a cuarto: marcado por el paciente</translation>
    </message>
    <message>
        <source>Little toe: marked by the patient</source>
        <translation>Dedo pequeño: marcado por el paciente</translation>
    </message>
    <message>
        <source>Outer ankle: marked by the patient</source>
        <translation>Tobillo externo: marcado por el paciente</translation>
    </message>
    <message>
        <source>Heel from behind, outer side: marked by the patient</source>
        <translation>Talón por detrás, lado externo: marcado por el paciente</translation>
    </message>
    <message>
        <source>Inner calf: marked by the patient</source>
        <translation>Pantorrilla interna: marcado por el paciente</translation>
    </message>
    <message>
        <source>Back of the calf: marked by the patient</source>
        <translation>Pantorrilla posterior: marcado por el paciente</translation>
    </message>
    <message>
        <source>Outer calf: marked by the patient</source>
        <translation>Pantorrilla externa: marcado por el paciente</translation>
    </message>
    <message>
        <source>Hollow behind the knee: marked by the patient</source>
        <translation>Hueco poplíteo: marcado por el paciente</translation>
    </message>
    <message>
        <source>Back of the thigh: marked by the patient</source>
        <translation>Muslo posterior: marcado por el paciente</translation>
    </message>
    <message>
        <source>Upper buttock: marked by the patient</source>
        <translation>Glúteo superior: marcado por el paciente</translation>
    </message>
    <message>
        <source>Lower buttock and fold: marked by the patient</source>
        <translation>Glúteo inferior y pliegue: marcado por el paciente</translation>
    </message>
    <message>
        <source>Low back: marked by the patient</source>
        <translation>Zona lumbar: marcado por el paciente</translation>
    </message>
    <message>
        <source>Sole, inner part: marked by the patient</source>
        <translation>Planta, parte interna: marcado por el paciente</translation>
    </message>
    <message>
        <source>Sole, outer part: marked by the patient</source>
        <translation>Planta, parte externa: marcado por el paciente</translation>
    </message>
    <message>
        <source>Heel pad: marked by the patient</source>
        <translation>Almohadilla del talón: marcado por el paciente</translation>
    </message>
    <message>
        <source>Around the genitals: marked by the patient</source>
        <translation>Alrededor de los genitales: marcado por el paciente</translation>
    </message>
    <message>
        <source>Around the anus: marked by the patient</source>
        <translation>Alrededor del ano: marcado por el paciente</translation>
    </message>
    <message>
        <source>Inner buttock, saddle area: marked by the patient</source>
        <translation>Glúteo interno, silla de montar: marcado por el paciente</translation>
    </message>
    <message>
        <source>Straight leg raise, seated</source>
        <translation>Lasègue sentado</translation>
    </message>
    <message>
        <source>Straight leg raise, seated: hip-knee angle at onset</source>
        <translation>Lasègue sentado: ángulo cadera-rodilla al inicio</translation>
    </message>
    <message>
        <source>Slump</source>
        <translation>Prueba de slump</translation>
    </message>
    <message>
        <source>Straight leg raise, supine</source>
        <translation>Lasègue en supino</translation>
    </message>
    <message>
        <source>Straight leg raise, supine: angle at onset</source>
        <translation>Lasègue en supino: ángulo al inicio</translation>
    </message>
    <message>
        <source>Worse on dorsiflexing the foot</source>
        <translation>Peor con la dorsiflexión del pie (Bragard)</translation>
    </message>
    <message>
        <source>Raising this leg brings on pain in the other leg</source>
        <translation>Elevar esta pierna provoca dolor en la otra (Lasègue cruzado)</translation>
    </message>
    <message>
        <source>Bowstring</source>
        <translation>Signo de la cuerda de arco</translation>
    </message>
    <message>
        <source>Femoral nerve stretch, prone</source>
        <translation>Estiramiento femoral, en prono (Lasègue invertido)</translation>
    </message>
    <message>
        <source>Leans back to escape when the seated leg is raised</source>
        <translation>Se inclina hacia atrás al elevar la pierna sentado</translation>
    </message>
    <message>
        <source>Hip internal rotation</source>
        <translation>Rotación interna de cadera</translation>
    </message>
    <message>
        <source>Hip external rotation</source>
        <translation>Rotación externa de cadera</translation>
    </message>
    <message>
        <source>Hip flexion range</source>
        <translation>Amplitud de flexión de cadera</translation>
    </message>
    <message>
        <source>Groin or familiar pain on hip rotation</source>
        <translation>Dolor inguinal o conocido al rotar la cadera</translation>
    </message>
    <message>
        <source>Flexion-abduction-external rotation</source>
        <translation>Flexión-abducción-rotación externa (Patrick)</translation>
    </message>
    <message>
        <source>Flexion-adduction-internal rotation</source>
        <translation>Flexión-aducción-rotación interna</translation>
    </message>
    <message>
        <source>Log roll</source>
        <translation>Rodamiento de la pierna</translation>
    </message>
    <message>
        <source>Distraction</source>
        <translation>Distracción</translation>
    </message>
    <message>
        <source>Compression</source>
        <translation>Compresión</translation>
    </message>
    <message>
        <source>Thigh thrust</source>
        <translation>Empuje del muslo</translation>
    </message>
    <message>
        <source>Pelvic torsion</source>
        <translation>Torsión pélvica</translation>
    </message>
    <message>
        <source>Sacral thrust</source>
        <translation>Empuje sacro</translation>
    </message>
    <message>
        <source>True leg length</source>
        <translation>Longitud real de la pierna</translation>
    </message>
    <message>
        <source>Thigh girth</source>
        <translation>Perímetro del muslo</translation>
    </message>
    <message>
        <source>Calf girth</source>
        <translation>Perímetro de la pantorrilla</translation>
    </message>
    <message>
        <source>Pulsatile abdominal mass</source>
        <translation>Masa abdominal pulsátil</translation>
    </message>
    <message>
        <source>Anal tone</source>
        <translation>Tono anal</translation>
    </message>
    <message>
        <source>Voluntary anal contraction</source>
        <translation>Contracción anal voluntaria</translation>
    </message>
    <message>
        <source>Present</source>
        <translation>Presente</translation>
    </message>
    <message>
        <source>Weak</source>
        <translation>Débil</translation>
    </message>
    <message>
        <source>Anal skin reflex</source>
        <translation>Reflejo anal</translation>
    </message>
    <message>
        <source>Sensory level on the trunk</source>
        <translation>Nivel sensitivo en el tronco</translation>
    </message>
    <message>
        <source>Arm weakness, brisk arm reflexes or hand clumsiness</source>
        <translation>Debilidad de brazos, reflejos vivos o torpeza de manos</translation>
    </message>
    <message>
        <source>pain</source>
        <translation>dolor</translation>
    </message>
    <message>
        <source>cast or brace</source>
        <translation>yeso u órtesis</translation>
    </message>
    <message>
        <source>amputation</source>
        <translation>amputación</translation>
    </message>
    <message>
        <source>cooperation</source>
        <translation>colaboración</translation>
    </message>
    <message>
        <source>declined</source>
        <translation>rechazado</translation>
    </message>
    <message>
        <source>other</source>
        <translation>otro</translation>
    </message>
    <message>
        <source>not testable</source>
        <translation>no valorable</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation>semanas</translation>
    </message>
    <message>
        <source>No root or nerve lesion</source>
        <translation>Sin lesión de raíz ni nervio</translation>
    </message>
    <message>
        <source>Arterial disease of the leg</source>
        <translation>Enfermedad arterial de la pierna</translation>
    </message>
    <message>
        <source>Greater trochanter</source>
        <translation>Trocánter mayor</translation>
    </message>
    <message>
        <source>Hip joint</source>
        <translation>Articulación de la cadera</translation>
    </message>
    <message>
        <source>Pain referred into the leg from back, joint or muscle</source>
        <translation>Dolor referido a la pierna desde espalda, articulación o músculo</translation>
    </message>
    <message>
        <source>L1 root</source>
        <translation>Raíz L1</translation>
    </message>
    <message>
        <source>L2 root</source>
        <translation>Raíz L2</translation>
    </message>
    <message>
        <source>L3 root</source>
        <translation>Raíz L3</translation>
    </message>
    <message>
        <source>L4 root</source>
        <translation>Raíz L4</translation>
    </message>
    <message>
        <source>L5 root</source>
        <translation>Raíz L5</translation>
    </message>
    <message>
        <source>S1 root</source>
        <translation>Raíz S1</translation>
    </message>
    <message>
        <source>S2 to S4 roots</source>
        <translation>Raíces S2 a S4</translation>
    </message>
    <message>
        <source>L2 and L3 roots</source>
        <translation>Raíces L2 y L3</translation>
    </message>
    <message>
        <source>L3 and L4 roots</source>
        <translation>Raíces L3 y L4</translation>
    </message>
    <message>
        <source>L4 and L5 roots</source>
        <translation>Raíces L4 y L5</translation>
    </message>
    <message>
        <source>L5 and S1 roots</source>
        <translation>Raíces L5 y S1</translation>
    </message>
    <message>
        <source>Femoral nerve</source>
        <translation>Nervio femoral</translation>
    </message>
    <message>
        <source>Saphenous nerve</source>
        <translation>Nervio safeno</translation>
    </message>
    <message>
        <source>Obturator nerve</source>
        <translation>Nervio obturador</translation>
    </message>
    <message>
        <source>Lateral femoral cutaneous nerve</source>
        <translation>Nervio cutáneo femoral lateral</translation>
    </message>
    <message>
        <source>Sciatic nerve</source>
        <translation>Nervio ciático</translation>
    </message>
    <message>
        <source>Common fibular nerve</source>
        <translation>Nervio peroneo común</translation>
    </message>
    <message>
        <source>Deep fibular nerve</source>
        <translation>Nervio peroneo profundo</translation>
    </message>
    <message>
        <source>Tibial nerve at the knee or in the calf</source>
        <translation>Nervio tibial en la rodilla o la pantorrilla</translation>
    </message>
    <message>
        <source>Tibial nerve at the ankle</source>
        <translation>Nervio tibial en el tobillo</translation>
    </message>
    <message>
        <source>Sural nerve</source>
        <translation>Nervio sural</translation>
    </message>
    <message>
        <source>Pudendal nerve</source>
        <translation>Nervio pudendo</translation>
    </message>
    <message>
        <source>Lumbar plexus</source>
        <translation>Plexo lumbar</translation>
    </message>
    <message>
        <source>Lumbosacral plexus</source>
        <translation>Plexo lumbosacro</translation>
    </message>
    <message>
        <source>Cauda equina</source>
        <translation>Cola de caballo</translation>
    </message>
    <message>
        <source>Conus medullaris</source>
        <translation>Cono medular</translation>
    </message>
    <message>
        <source>Upper motor neuron</source>
        <translation>Primera motoneurona</translation>
    </message>
    <message>
        <source>Upper motor neuron, brain</source>
        <translation>Primera motoneurona, cerebro</translation>
    </message>
    <message>
        <source>Upper motor neuron, back of the cord</source>
        <translation>Primera motoneurona, cordones posteriores</translation>
    </message>
    <message>
        <source>Upper motor neuron, half of the cord</source>
        <translation>Primera motoneurona, hemimédula</translation>
    </message>
    <message>
        <source>Length-dependent polyneuropathy</source>
        <translation>Polineuropatía dependiente de longitud</translation>
    </message>
    <message>
        <source>Acute or subacute polyradiculoneuropathy</source>
        <translation>Polirradiculoneuropatía aguda o subaguda</translation>
    </message>
    <message>
        <source>Several roots on both sides</source>
        <translation>Varias raíces de ambos lados</translation>
    </message>
    <message>
        <source>Weakness with signs of the arm, face or speech that came within days: possible stroke.</source>
        <translation>Debilidad con signos en brazo, cara o habla aparecidos en días: posible ictus.</translation>
    </message>
    <message>
        <source>Usually the emergency service is called at once; the lumbar spine can wait; follow the local pathway.</source>
        <translation>Lo habitual: llamar de inmediato a emergencias; la columna lumbar puede esperar; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Cord signs with a change of bladder, bowel or saddle: image the whole spine, cord first.</source>
        <translation>Signos medulares con cambio de vejiga, intestino o silla de montar: imagen de toda la columna, primero la médula.</translation>
    </message>
    <message>
        <source>Usually same-day emergency assessment with imaging of the whole spine, since a lumbar image alone can miss the lesion; follow the local pathway.</source>
        <translation>Lo habitual: valoración urgente el mismo día con imagen de toda la columna, pues la lumbar sola puede no ver la lesión; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Cord or brain signs that are progressing or came within days.</source>
        <translation>Signos medulares o cerebrales que progresan o aparecieron en días.</translation>
    </message>
    <message>
        <source>Usually same-day emergency assessment with imaging above the lumbar spine; follow the local pathway.</source>
        <translation>Lo habitual: valoración urgente el mismo día con imagen por encima de la columna lumbar; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Signs of the cord or brain: the lumbar roots do not explain them.</source>
        <translation>Signos de médula o cerebro: las raíces lumbares no los explican.</translation>
    </message>
    <message>
        <source>Usually urgent neurological assessment with imaging above the lumbar spine; follow the local pathway.</source>
        <translation>Lo habitual: valoración neurológica urgente con imagen por encima de la columna lumbar; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Brisk reflexes or unsteadiness alone: weak evidence.</source>
        <translation>Solo reflejos vivos o inestabilidad: indicio débil.</translation>
    </message>
    <message>
        <source>Usually plantar response, clonus, tone and the arms are checked at this visit; follow the local pathway.</source>
        <translation>Lo habitual: comprobar en esta visita reflejo plantar, clonus, tono y brazos; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Signs that the nerves to the bladder, bowel and saddle may be compressed.</source>
        <translation>Signos de posible compresión de los nervios de vejiga, intestino y silla de montar.</translation>
    </message>
    <message>
        <source>Usually same-day emergency assessment and imaging by the local cauda equina pathway, without waiting for a rectal examination or a bladder scan; follow the local pathway.</source>
        <translation>Lo habitual: valoración urgente e imagen el mismo día según el protocolo local de cola de caballo, sin esperar tacto rectal ni ecografía vesical; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Both legs or a related function are affected: ask about bladder, bowel, saddle feeling and sexual function, and test the saddle.</source>
        <translation>Afectadas ambas piernas o una función relacionada: pregunte por vejiga, intestino, sensibilidad en silla de montar y función sexual, y explore la silla.</translation>
    </message>
    <message>
        <source>Usually the bladder, bowel and saddle questions are completed now, anything new is discussed the same day, and written safety-net advice is given; follow the local pathway.</source>
        <translation>Lo habitual: completar ahora las preguntas de vejiga, intestino y silla, comentar lo nuevo el mismo día y dar consejos de alarma por escrito; siga el protocolo local.</translation>
    </message>
    <message>
        <source>A bladder, bowel or saddle finding that is long-standing or weak on its own.</source>
        <translation>Un hallazgo de vejiga, intestino o silla de larga data o débil por sí solo.</translation>
    </message>
    <message>
        <source>Usually it is asked again at every visit what has changed, and written safety-net advice is given; follow the local pathway.</source>
        <translation>Lo habitual: preguntar en cada visita qué ha cambiado y dar consejos de alarma por escrito; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Marked weakness in both legs.</source>
        <translation>Debilidad marcada en ambas piernas.</translation>
    </message>
    <message>
        <source>Usually same-day emergency assessment; follow the local pathway.</source>
        <translation>Lo habitual: valoración urgente el mismo día; siga el protocolo local.</translation>
    </message>
    <message>
        <source>A key movement cannot overcome more than gravity.</source>
        <translation>Un movimiento clave no vence más que la gravedad.</translation>
    </message>
    <message>
        <source>Usually same-day telephone discussion with the spine or neurology service, with the day it began; follow the local pathway.</source>
        <translation>Lo habitual: comentar por teléfono el mismo día con columna o neurología, con el día de inicio; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Walking on the heel or the toes fails, and the movement is weak by hand or was not tested by hand.</source>
        <translation>Falla la marcha de talón o de puntillas, y el movimiento es débil a la mano o no se exploró a mano.</translation>
    </message>
    <message>
        <source>Usually the movement is tested by hand now, then a same-day telephone discussion with the spine or neurology service, with the day it began; follow the local pathway.</source>
        <translation>Lo habitual: explorar ahora el movimiento a mano y comentarlo por teléfono el mismo día con columna o neurología, con el día de inicio; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Marked weakness that pain may explain in part.</source>
        <translation>Debilidad marcada que el dolor puede explicar en parte.</translation>
    </message>
    <message>
        <source>Usually strength is tested again after pain relief, and a weakness that stays is discussed the same day; follow the local pathway.</source>
        <translation>Lo habitual: repetir la fuerza tras aliviar el dolor y comentar el mismo día la debilidad que persista; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Marked weakness said to be older than six weeks, not seen before at this clinic.</source>
        <translation>Debilidad marcada de más de seis semanas según se refiere, no vista antes en esta consulta.</translation>
    </message>
    <message>
        <source>Usually a discussion within days, with the course since it began; follow the local pathway.</source>
        <translation>Lo habitual: comentarlo en días, con la evolución desde el inicio; siga el protocolo local.</translation>
    </message>
    <message>
        <source>A known marked weakness, a weak toe alone or a failed walking test alone.</source>
        <translation>Una debilidad marcada conocida, solo un dedo débil o solo una prueba de marcha fallida.</translation>
    </message>
    <message>
        <source>Usually the movement is tested by hand and its grade compared with the last visit; follow the local pathway.</source>
        <translation>Lo habitual: explorar el movimiento a mano y comparar su grado con la última visita; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Weakness of both legs that is getting worse.</source>
        <translation>Debilidad de ambas piernas que empeora.</translation>
    </message>
    <message>
        <source>Weakness is increasing.</source>
        <translation>La debilidad aumenta.</translation>
    </message>
    <message>
        <source>Usually same-day discussion with the spine or neurology service; follow the local pathway.</source>
        <translation>Lo habitual: comentarlo el mismo día con columna o neurología; siga el protocolo local.</translation>
    </message>
    <message>
        <source>One grade lower than at the last visit, or a growing weakness that is felt but not found.</source>
        <translation>Un grado menos que en la última visita, o una debilidad creciente percibida pero no hallada.</translation>
    </message>
    <message>
        <source>Usually the test is repeated now by the same examiner, and a fall that stays is discussed the same day; follow the local pathway.</source>
        <translation>Lo habitual: repetir ahora la prueba el mismo explorador y comentar el mismo día un descenso que persista; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Weakness of both legs that came within weeks, with lost reflexes or trouble breathing or swallowing: possible acute polyneuropathy, which can reach breathing.</source>
        <translation>Debilidad de ambas piernas en semanas, con reflejos abolidos o dificultad para respirar o tragar: posible polineuropatía aguda, que puede alcanzar la respiración.</translation>
    </message>
    <message>
        <source>Usually same-day emergency assessment with breathing and heart rhythm watched; follow the local pathway.</source>
        <translation>Lo habitual: valoración urgente el mismo día vigilando respiración y ritmo cardíaco; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Weakness of both legs with lost knee and ankle reflexes, or leg weakness with trouble breathing or swallowing.</source>
        <translation>Debilidad de ambas piernas con reflejos rotulianos y aquíleos abolidos, o debilidad de pierna con dificultad para respirar o tragar.</translation>
    </message>
    <message>
        <source>Usually same-day neurological discussion, with how fast it came and whether breathing and swallowing are free; follow the local pathway.</source>
        <translation>Lo habitual: comentarlo con neurología el mismo día, con la rapidez del inicio y si respira y traga bien; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Long-known weakness with lost reflexes, or trouble breathing or swallowing without leg weakness.</source>
        <translation>Debilidad conocida con reflejos abolidos, o dificultad para respirar o tragar sin debilidad de pierna.</translation>
    </message>
    <message>
        <source>Usually the known cause is looked up and a change since then is asked for; follow the local pathway.</source>
        <translation>Lo habitual: consultar la causa conocida y preguntar por cambios desde entonces; siga el protocolo local.</translation>
    </message>
    <message>
        <source>New weakness within days under anticoagulants or after a spinal procedure: possible bleeding into the spine or the hip flexor.</source>
        <translation>Debilidad nueva en días con anticoagulantes o tras un procedimiento espinal: posible sangrado en la columna o el flexor de la cadera.</translation>
    </message>
    <message>
        <source>Usually same-day emergency assessment with imaging, and the clotting treatment named in the call; follow the local pathway.</source>
        <translation>Lo habitual: valoración urgente el mismo día con imagen, mencionando el anticoagulante en la llamada; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Weak hip flexion or knee extension under anticoagulants: bleeding into the hip flexor is possible.</source>
        <translation>Flexión de cadera o extensión de rodilla débiles con anticoagulantes: posible sangrado en el flexor de la cadera.</translation>
    </message>
    <message>
        <source>Usually a same-day discussion, with how fast it came, groin pain and the blood count; follow the local pathway.</source>
        <translation>Lo habitual: comentarlo el mismo día, con la rapidez del inicio, el dolor inguinal y el hemograma; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Fast severe pain under anticoagulants or after a spinal procedure.</source>
        <translation>Dolor intenso de inicio rápido con anticoagulantes o tras un procedimiento espinal.</translation>
    </message>
    <message>
        <source>Usually strength and saddle are tested at this visit, with advice to return at once with any weakness; follow the local pathway.</source>
        <translation>Lo habitual: explorar fuerza y silla en esta visita y aconsejar volver de inmediato ante cualquier debilidad; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Cancer with weak legs, cord signs, failing gait or a bladder, bowel or saddle change: possible compression of the cord by a tumor.</source>
        <translation>Cáncer con piernas débiles, signos medulares, marcha alterada o cambio de vejiga, intestino o silla: posible compresión medular por tumor.</translation>
    </message>
    <message>
        <source>Usually same-day contact with the cord compression service, with imaging of the whole spine within a day; follow the local pathway.</source>
        <translation>Lo habitual: contactar el mismo día con el servicio de compresión medular, con imagen de toda la columna en un día; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Cancer now or within ten years, or weight loss with another pointer.</source>
        <translation>Cáncer ahora o en los últimos diez años, o pérdida de peso con otro indicio.</translation>
    </message>
    <message>
        <source>Usually early imaging and blood tests are considered; follow the local pathway.</source>
        <translation>Lo habitual: considerar imagen y análisis tempranos; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Weak pointers to serious disease; most people with them have none.</source>
        <translation>Indicios débiles de enfermedad grave; la mayoría de quienes los tienen no la padecen.</translation>
    </message>
    <message>
        <source>Usually a review at the next visit if it is not improving; follow the local pathway.</source>
        <translation>Lo habitual: revisión en la próxima visita si no mejora; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Fever or a setting for infection with new weakness, or fever with low pressure or a racing pulse: possible epidural abscess or sepsis.</source>
        <translation>Fiebre o riesgo de infección con debilidad nueva, o fiebre con presión baja o pulso muy rápido: posible absceso epidural o sepsis.</translation>
    </message>
    <message>
        <source>Usually same-day emergency assessment with imaging of the whole spine and blood cultures; follow the local pathway.</source>
        <translation>Lo habitual: valoración urgente el mismo día con imagen de toda la columna y hemocultivos; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Fever with a hip that hurts on rotation: possible infection of the joint or of the hip flexor.</source>
        <translation>Fiebre con cadera dolorosa a la rotación: posible infección de la articulación o del flexor de la cadera.</translation>
    </message>
    <message>
        <source>Usually the joint is assessed the same day, with blood tests; follow the local pathway.</source>
        <translation>Lo habitual: valorar la articulación el mismo día, con análisis de sangre; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Possible infection of the spine or the muscles beside it.</source>
        <translation>Posible infección de la columna o de los músculos contiguos.</translation>
    </message>
    <message>
        <source>Usually same-day blood tests and discussion; follow the local pathway.</source>
        <translation>Lo habitual: análisis y consulta el mismo día; siga el protocolo local.</translation>
    </message>
    <message>
        <source>A setting in which spinal infection is likelier; no fever does not exclude it.</source>
        <translation>Situación en la que la infección espinal es más probable; la ausencia de fiebre no la excluye.</translation>
    </message>
    <message>
        <source>Usually fever is asked for again, with a low threshold for blood tests; follow the local pathway.</source>
        <translation>Lo habitual: volver a preguntar por fiebre, con umbral bajo para análisis; siga el protocolo local.</translation>
    </message>
    <message>
        <source>High-energy injury with a deficit: possible unstable fracture.</source>
        <translation>Lesión de alta energía con déficit: posible fractura inestable.</translation>
    </message>
    <message>
        <source>Usually the spine is kept still and the emergency service called; follow the local pathway.</source>
        <translation>Lo habitual: inmovilizar la columna y llamar a emergencias; siga el protocolo local.</translation>
    </message>
    <message>
        <source>A strong pointer to a spinal fracture: high energy, a bruise over the spine, a stiffened spine that was hurt, or three pointers together.</source>
        <translation>Indicio fuerte de fractura vertebral: alta energía, hematoma sobre la columna, columna rígida lesionada o tres indicios juntos.</translation>
    </message>
    <message>
        <source>Usually imaging the same day; follow the local pathway.</source>
        <translation>Lo habitual: imagen el mismo día; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Several pointers to a spinal fracture (house rule near the published count).</source>
        <translation>Varios indicios de fractura vertebral (regla propia próxima al recuento publicado).</translation>
    </message>
    <message>
        <source>Usually imaging is considered within days; follow the local pathway.</source>
        <translation>Lo habitual: considerar imagen en días; siga el protocolo local.</translation>
    </message>
    <message>
        <source>One pointer to fracture.</source>
        <translation>Un indicio de fractura.</translation>
    </message>
    <message>
        <source>Usually the spine is percussed and imaging considered if pain persists; follow the local pathway.</source>
        <translation>Lo habitual: percutir la columna y considerar imagen si el dolor persiste; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Possible leaking aortic aneurysm.</source>
        <translation>Posible aneurisma aórtico con fuga.</translation>
    </message>
    <message>
        <source>Usually the emergency service is called at once, whether or not a mass is felt; follow the local pathway.</source>
        <translation>Lo habitual: llamar de inmediato a emergencias, se palpe o no una masa; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Wide abdominal pulsation, or new back pain with a known aneurysm.</source>
        <translation>Pulsación abdominal amplia, o dolor de espalda nuevo con aneurisma conocido.</translation>
    </message>
    <message>
        <source>Usually same-day ultrasound or vascular discussion; follow the local pathway.</source>
        <translation>Lo habitual: ecografía o consulta vascular el mismo día; siga el protocolo local.</translation>
    </message>
    <message>
        <source>A known aneurysm without new pain.</source>
        <translation>Aneurisma conocido sin dolor nuevo.</translation>
    </message>
    <message>
        <source>Usually it is asked whether surveillance is up to date; follow the local pathway.</source>
        <translation>Lo habitual: preguntar si el seguimiento está al día; siga el protocolo local.</translation>
    </message>
    <message>
        <source>A leg that may be losing its blood supply.</source>
        <translation>Una pierna que puede estar perdiendo el riego.</translation>
    </message>
    <message>
        <source>Usually emergency vascular assessment now; follow the local pathway.</source>
        <translation>Lo habitual: valoración vascular urgente ahora; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Pulses or circulation of a leg need a second look now: feel the other pulses, compare color and warmth.</source>
        <translation>Pulsos o circulación de una pierna requieren otra mirada ahora: palpe los demás pulsos, compare color y temperatura.</translation>
    </message>
    <message>
        <source>Usually the pulses are sought with Doppler at this visit and vascular advice taken the same day; follow the local pathway.</source>
        <translation>Lo habitual: buscar los pulsos con Doppler en esta visita y pedir consejo vascular el mismo día; siga el protocolo local.</translation>
    </message>
    <message>
        <source>A pulse could not be felt, or the ankle pressure is low.</source>
        <translation>No se palpó un pulso, o la presión del tobillo es baja.</translation>
    </message>
    <message>
        <source>Usually the ankle-brachial index is measured, and color and warmth compared; follow the local pathway.</source>
        <translation>Lo habitual: medir el índice tobillo-brazo y comparar color y temperatura; siga el protocolo local.</translation>
    </message>
    <message>
        <source>A new painful leg with a swollen calf: think of a vein clot.</source>
        <translation>Pierna dolorosa nueva con pantorrilla hinchada: piense en trombosis venosa.</translation>
    </message>
    <message>
        <source>Usually a same-day clot score and ultrasound are considered; follow the local pathway.</source>
        <translation>Lo habitual: considerar el mismo día puntuación de trombosis y ecografía; siga el protocolo local.</translation>
    </message>
    <message>
        <source>One calf is swollen or clearly thicker than the other.</source>
        <translation>Una pantorrilla está hinchada o claramente más gruesa que la otra.</translation>
    </message>
    <message>
        <source>Usually a vein clot is considered beside wasting of the other calf; follow the local pathway.</source>
        <translation>Lo habitual: considerar trombosis venosa además de atrofia de la otra pantorrilla; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Blistering rash with weakness on its side, bladder change or low immunity.</source>
        <translation>Erupción con ampollas y debilidad de su lado, cambio vesical o inmunidad baja.</translation>
    </message>
    <message>
        <source>Usually a prompt decision on antiviral treatment and a medical review; follow the local pathway.</source>
        <translation>Lo habitual: decidir pronto el tratamiento antiviral y revisión médica; siga el protocolo local.</translation>
    </message>
    <message>
        <source>A recent blistering rash: shingles can cause root pain, numbness and weakness.</source>
        <translation>Erupción reciente con ampollas: el herpes zóster puede causar dolor radicular, adormecimiento y debilidad.</translation>
    </message>
    <message>
        <source>Usually antiviral treatment is considered, most useful within days of the rash; follow the local pathway.</source>
        <translation>Lo habitual: considerar antivirales, más útiles en los primeros días de la erupción; siga el protocolo local.</translation>
    </message>
    <message>
        <source>The pain behaves like inflammatory back pain.</source>
        <translation>El dolor se comporta como dolor de espalda inflamatorio.</translation>
    </message>
    <message>
        <source>Usually referral to rheumatology is considered when it has lasted three months; follow the local pathway.</source>
        <translation>Lo habitual: considerar derivación a reumatología si dura tres meses; siga el protocolo local.</translation>
    </message>
    <message>
        <source>Axial spondyloarthritis</source>
        <translation>Espondiloartritis axial</translation>
    </message>
    <message>
        <source>Lumbar stenosis</source>
        <translation>Estenosis lumbar</translation>
    </message>
    <message>
        <source>Heel walking and seated dorsiflexion disagree: repeat both; pain and balance can explain it.</source>
        <translation>La marcha de talón y la dorsiflexión sentado no concuerdan: repita ambas; el dolor y el equilibrio pueden explicarlo.</translation>
    </message>
    <message>
        <source>Toe walking or heel raises are better than the seated plantarflexion grade: repeat. The reverse is expected, since body weight shows mild weakness.</source>
        <translation>La marcha de puntillas o las elevaciones de talón son mejores que el grado de flexión plantar sentado: repita. Lo contrario es lo esperado, pues el peso corporal revela la debilidad leve.</translation>
    </message>
    <message>
        <source>Rising on one leg is better than the seated knee extension grade: repeat.</source>
        <translation>Levantarse con una pierna es mejor que el grado de extensión de rodilla sentado: repita.</translation>
    </message>
    <message>
        <source>The two leg raises differ by 40 degrees or more: repeat both and record both angles. The seated test found 41 percent and the supine test 67 percent of proven root compressions, so a negative seated test alone means little.</source>
        <translation>Las dos elevaciones difieren en 40 grados o más: repita ambas y registre ambos ángulos. La prueba sentado halló el 41 por ciento y en supino el 67 por ciento de las compresiones probadas; una prueba sentado negativa por sí sola significa poco.</translation>
    </message>
    <message>
        <source>Strength gives way on this side: grades there count less; pain is a common cause.</source>
        <translation>La fuerza cede en este lado: los grados cuentan menos; el dolor es causa frecuente.</translation>
    </message>
    <message>
        <source>Touch absent with pinprick kept in several places: large fibres or the dorsal columns can do this, so check vibration and position, then repeat with eyes closed.</source>
        <translation>Tacto ausente con pinchazo conservado en varios lugares: pueden ser fibras gruesas o cordones posteriores; compruebe vibración y posición y repita con los ojos cerrados.</translation>
    </message>
    <message>
        <source>Three or more of the five behavioral groups are present. They do not show intent and do not exclude disease; think of pain, fear and distress, and keep every red sign as it stands.</source>
        <translation>Hay tres o más de los cinco grupos conductuales. No demuestran intención ni excluyen enfermedad; piense en dolor, miedo y angustia, y mantenga cada signo de alarma.</translation>
    </message>
    <message>
        <source>From behind, bare to the buttocks: compare waist, flank and buttock folds.</source>
        <translation>Por detrás, descubierto hasta los glúteos: compare pliegues de cintura, flanco y glúteo.</translation>
    </message>
    <message>
        <source>Folds clearly unequal.</source>
        <translation>Pliegues claramente desiguales.</translation>
    </message>
    <message>
        <source>Thumbs or flat hands on top of both crests, eyes level with them, knees straight, weight on both feet.</source>
        <translation>Pulgares o manos planas sobre ambas crestas, ojos a su altura, rodillas rectas, peso en ambos pies.</translation>
    </message>
    <message>
        <source>One hand clearly higher.</source>
        <translation>Una mano claramente más alta.</translation>
    </message>
    <message>
        <source>From behind, compare the tips of the shoulder blades and the tops of the shoulders.</source>
        <translation>Por detrás, compare las puntas de los omóplatos y la altura de los hombros.</translation>
    </message>
    <message>
        <source>One side clearly higher.</source>
        <translation>Un lado claramente más alto.</translation>
    </message>
    <message>
        <source>Slide blocks under the foot of the low side until the crests are level; read the height.</source>
        <translation>Ponga alzas bajo el pie del lado bajo hasta nivelar las crestas; lea la altura.</translation>
    </message>
    <message>
        <source>The height of the blocks.</source>
        <translation>La altura de las alzas.</translation>
    </message>
    <message>
        <source>From behind, drop a line from the middle of the neck to the cleft.</source>
        <translation>Por detrás, plomada desde el centro del cuello hasta el pliegue interglúteo.</translation>
    </message>
    <message>
        <source>The trunk stands off the line: name the side it leans to.</source>
        <translation>El tronco se aparta de la línea: nombre el lado al que se inclina.</translation>
    </message>
    <message>
        <source>Compare both sides relaxed and then tensed; measure the girth where in doubt.</source>
        <translation>Compare ambos lados en reposo y en tensión; mida el perímetro si duda.</translation>
    </message>
    <message>
        <source>One part thinner than the other side; name the part.</source>
        <translation>Una parte más delgada que la del otro lado; nómbrela.</translation>
    </message>
    <message>
        <source>Tape round the chest at nipple level, arms down: full breath out, then full breath in.</source>
        <translation>Cinta a la altura de los pezones, brazos caídos: espire del todo y luego inspire del todo.</translation>
    </message>
    <message>
        <source>The difference of the two readings.</source>
        <translation>La diferencia de las dos lecturas.</translation>
    </message>
    <message>
        <source>Bend forward with straight knees; distance from the middle finger to the floor. Below standing level counts as minus.</source>
        <translation>Inclínese con rodillas rectas; distancia del dedo medio al suelo. Por debajo del nivel de apoyo cuenta como negativo.</translation>
    </message>
    <message>
        <source>The distance in centimeters.</source>
        <translation>La distancia en centímetros.</translation>
    </message>
    <message>
        <source>Mark the spine at the level of the pelvic dimples, 10 cm above and 5 cm below; measure between the outer marks, standing and fully bent.</source>
        <translation>Marque a la altura de los hoyuelos pélvicos, 10 cm por encima y 5 cm por debajo; mida entre las marcas externas de pie y en flexión completa.</translation>
    </message>
    <message>
        <source>The growth of the 15 cm.</source>
        <translation>El aumento de los 15 cm.</translation>
    </message>
    <message>
        <source>Ask during the bend what hurts and where.</source>
        <translation>Pregunte durante la flexión qué duele y dónde.</translation>
    </message>
    <message>
        <source>Back: pain stays above the buttock crease. Leg: the familiar pain runs into the leg.</source>
        <translation>Espalda: el dolor queda por encima del pliegue glúteo. Pierna: el dolor conocido baja por la pierna.</translation>
    </message>
    <message>
        <source>Lean back with a hand for support; hold for some seconds and ask what hurts.</source>
        <translation>Inclínese hacia atrás apoyando una mano; mantenga unos segundos y pregunte qué duele.</translation>
    </message>
    <message>
        <source>Back or leg, as for the forward bend.</source>
        <translation>Espalda o pierna, como en la flexión anterior.</translation>
    </message>
    <message>
        <source>Palms together, bend forward; look along the back from behind.</source>
        <translation>Palmas juntas, inclínese; mire la espalda desde atrás.</translation>
    </message>
    <message>
        <source>One side of the ribs or loin stands higher.</source>
        <translation>Un lado de las costillas o del lomo queda más alto.</translation>
    </message>
    <message>
        <source>Watch how the patient comes up from the bend.</source>
        <translation>Observe cómo se recupera de la flexión.</translation>
    </message>
    <message>
        <source>Hands climbing up the thighs, a sway of the hips, or a painful catch.</source>
        <translation>Las manos trepan por los muslos, balanceo de caderas o un bloqueo doloroso.</translation>
    </message>
    <message>
        <source>Both thumbs beside the spine, patient relaxed; compare at the same level.</source>
        <translation>Ambos pulgares junto a la columna, paciente relajado; compare al mismo nivel.</translation>
    </message>
    <message>
        <source>Firm or hard against the other side.</source>
        <translation>Firme o duro respecto al otro lado.</translation>
    </message>
    <message>
        <source>Press each spinous process with a thumb, from above to the sacrum.</source>
        <translation>Presione cada apófisis espinosa con el pulgar, de arriba al sacro.</translation>
    </message>
    <message>
        <source>Pain on firm pressure; name the height.</source>
        <translation>Dolor a la presión firme; nombre la altura.</translation>
    </message>
    <message>
        <source>Tap each spinous process lightly with the closed fist.</source>
        <translation>Golpee suavemente cada apófisis espinosa con el puño cerrado.</translation>
    </message>
    <message>
        <source>Sharp pain at one place.</source>
        <translation>Dolor agudo en un punto.</translation>
    </message>
    <message>
        <source>Slide a finger down the spinous processes, standing.</source>
        <translation>De pie, deslice un dedo por las apófisis espinosas.</translation>
    </message>
    <message>
        <source>One process clearly set back from the next.</source>
        <translation>Una apófisis claramente retrasada respecto a la siguiente.</translation>
    </message>
    <message>
        <source>Ten paces there and back, bare feet, without holding on.</source>
        <translation>Diez pasos de ida y vuelta, descalzo, sin agarrarse.</translation>
    </message>
    <message>
        <source>The pattern that stands out most.</source>
        <translation>El patrón más llamativo.</translation>
    </message>
    <message>
        <source>Five paces on the heels, forefeet off the floor; a hand for balance only.</source>
        <translation>Cinco pasos sobre los talones, antepiés en el aire; una mano solo para el equilibrio.</translation>
    </message>
    <message>
        <source>Difficult: the forefoot sinks. Unable: it does not leave the floor.</source>
        <translation>Con dificultad: el antepié baja. Imposible: no se despega del suelo.</translation>
    </message>
    <message>
        <source>Five paces on tiptoe; a hand for balance only.</source>
        <translation>Cinco pasos de puntillas; una mano solo para el equilibrio.</translation>
    </message>
    <message>
        <source>Difficult: the heel sinks. Unable: it does not leave the floor.</source>
        <translation>Con dificultad: el talón baja. Imposible: no se despega del suelo.</translation>
    </message>
    <message>
        <source>On one leg, knee straight, fingertips on the wall: as many full heel raises as possible.</source>
        <translation>Sobre una pierna, rodilla recta, dedos en la pared: tantas elevaciones completas de talón como pueda.</translation>
    </message>
    <message>
        <source>Raises of full height.</source>
        <translation>Elevaciones a altura completa.</translation>
    </message>
    <message>
        <source>From a chair of normal height, arms crossed, rise on one leg.</source>
        <translation>De una silla de altura normal, brazos cruzados, levántese con una pierna.</translation>
    </message>
    <message>
        <source>Difficult: only with a swing. Unable: not at all.</source>
        <translation>Con dificultad: solo con impulso. Imposible: de ningún modo.</translation>
    </message>
    <message>
        <source>Stand on one leg for thirty seconds, watch the pelvis from behind.</source>
        <translation>Treinta segundos sobre una pierna; observe la pelvis por detrás.</translation>
    </message>
    <message>
        <source>The pelvis drops on the lifted side: the weakness is on the standing side, record it there.</source>
        <translation>La pelvis cae del lado elevado: la debilidad está en el lado de apoyo, regístrela allí.</translation>
    </message>
    <message>
        <source>Feet together, arms at the sides; eyes open, then closed for twenty seconds; stand ready to catch.</source>
        <translation>Pies juntos, brazos a los lados; ojos abiertos y luego cerrados veinte segundos; esté listo para sujetar.</translation>
    </message>
    <message>
        <source>Sways or steps only with the eyes closed.</source>
        <translation>Oscila o da un paso solo con los ojos cerrados.</translation>
    </message>
    <message>
        <source>Ten paces heel to toe on a line.</source>
        <translation>Diez pasos talón-punta sobre una línea.</translation>
    </message>
    <message>
        <source>Steps off the line, or cannot begin.</source>
        <translation>Se sale de la línea o no puede empezar.</translation>
    </message>
    <message>
        <source>Legs hanging free; tap below the kneecap. Nothing comes: hooked fingers, pull, tap again and record that reinforcement was used.</source>
        <translation>Piernas colgando; golpee bajo la rótula. Si no aparece: dedos enganchados, tire, golpee de nuevo y anote el refuerzo.</translation>
    </message>
    <message>
        <source>0 none, 1 less, 2 usual, 3 brisk, 4 clonus; a difference between sides weighs more than the figure.</source>
        <translation>0 ausente, 1 menor, 2 habitual, 3 vivo, 4 clonus; una diferencia entre lados pesa más que la cifra.</translation>
    </message>
    <message>
        <source>Foot held lightly at a right angle; tap the tendon, or the sole over your hand.</source>
        <translation>Pie sostenido suavemente en ángulo recto; golpee el tendón, o la planta sobre su mano.</translation>
    </message>
    <message>
        <source>Graded as the knee. Both absent is common in old age.</source>
        <translation>Grados como en la rodilla. La ausencia bilateral es común en la vejez.</translation>
    </message>
    <message>
        <source>Finger across the inner hamstring tendon behind the bent knee; tap the finger.</source>
        <translation>Dedo cruzado sobre el tendón isquiotibial interno tras la rodilla flexionada; golpee el dedo.</translation>
    </message>
    <message>
        <source>A difference between sides; hard to obtain in many healthy people.</source>
        <translation>Una diferencia entre lados; difícil de obtener en muchos sanos.</translation>
    </message>
    <message>
        <source>Legs slightly apart; finger on the tendon above the inner knee, tap the finger.</source>
        <translation>Piernas algo separadas; dedo sobre el tendón encima de la rodilla interna, golpee el dedo.</translation>
    </message>
    <message>
        <source>A difference between sides.</source>
        <translation>Una diferencia entre lados.</translation>
    </message>
    <message>
        <source>Hook the fingers of both hands and pull at the moment of the tap.</source>
        <translation>Enganche los dedos de ambas manos y tire en el momento del golpe.</translation>
    </message>
    <message>
        <source>Yes when a reflex was recorded with its help.</source>
        <translation>Sí cuando un reflejo se registró con su ayuda.</translation>
    </message>
    <message>
        <source>Stroke the outer sole from the heel forward and across the ball with a blunt point; watch the first movement of the great toe.</source>
        <translation>Con punta roma, recorra la planta externa desde el talón y a través de la almohadilla; observe el primer movimiento del dedo gordo.</translation>
    </message>
    <message>
        <source>Up: the toe rises. Equivocal: a withdrawal or unlike each time.</source>
        <translation>Extensor: el dedo sube. Dudoso: retirada o distinto cada vez.</translation>
    </message>
    <message>
        <source>Knee bent and supported; push the foot up briskly and hold.</source>
        <translation>Rodilla flexionada y apoyada; empuje el pie hacia arriba con rapidez y mantenga.</translation>
    </message>
    <message>
        <source>Five beats or more that keep going.</source>
        <translation>Cinco sacudidas o más que persisten.</translation>
    </message>
    <message>
        <source>Patient relaxed; bend and straighten the knee, slow and then fast.</source>
        <translation>Paciente relajado; flexione y extienda la rodilla, despacio y luego rápido.</translation>
    </message>
    <message>
        <source>Flaccid: no resistance. Spastic: a catch that comes with speed.</source>
        <translation>Flácido: sin resistencia. Espástico: un tope que aparece con la velocidad.</translation>
    </message>
    <message>
        <source>Seated: lift the knee; push down just above it.</source>
        <translation>Sentado: levante la rodilla; empuje hacia abajo justo por encima.</translation>
    </message>
    <message>
        <source>5 holds full push, 4 holds some, 3 only against gravity, 2 only without it, 1 a flicker, 0 nothing.</source>
        <translation>5 resiste empuje completo, 4 algo, 3 solo contra gravedad, 2 solo sin ella, 1 un esbozo, 0 nada.</translation>
    </message>
    <message>
        <source>Seated: squeeze the knees against your fists.</source>
        <translation>Sentado: apriete las rodillas contra sus puños.</translation>
    </message>
    <message>
        <source>Grades as for hip flexion.</source>
        <translation>Grados como en la flexión de cadera.</translation>
    </message>
    <message>
        <source>Seated, knee a little bent: straighten; push down above the ankle. Strong legs hide weakness: compare rising on one leg.</source>
        <translation>Sentado, rodilla algo flexionada: extienda; empuje abajo por encima del tobillo. Las piernas fuertes ocultan debilidad: compare levantarse con una pierna.</translation>
    </message>
    <message>
        <source>Seated: pull the heel back under the chair against your hand.</source>
        <translation>Sentado: tire del talón bajo la silla contra su mano.</translation>
    </message>
    <message>
        <source>Foot pulled up and kept there; push it down and outward from above the forefoot.</source>
        <translation>Pie arriba y mantenido; empuje hacia abajo y afuera desde el antepié.</translation>
    </message>
    <message>
        <source>Great toe pulled up and kept there; push on its nail with one finger, both sides at once to compare.</source>
        <translation>Dedo gordo arriba y mantenido; empuje su uña con un dedo, ambos lados a la vez para comparar.</translation>
    </message>
    <message>
        <source>Lesser toes pulled up; push down on them together.</source>
        <translation>Dedos menores arriba; empújelos juntos hacia abajo.</translation>
    </message>
    <message>
        <source>Foot pointed down and turned in; push it out at the inner edge. Pointing down leaves out the muscle that also pulls up.</source>
        <translation>Pie hacia abajo y girado adentro; empuje afuera por el borde interno. Apuntar abajo excluye el músculo que también eleva.</translation>
    </message>
    <message>
        <source>Foot turned out; push it in at the outer edge.</source>
        <translation>Pie girado afuera; empuje adentro por el borde externo.</translation>
    </message>
    <message>
        <source>Seated push on your palm finds only marked weakness: a healthy calf wins. Rather let the patient rise on one heel, standing.</source>
        <translation>Empujar sentado su palma solo muestra debilidad marcada: una pantorrilla sana gana. Mejor que se eleve sobre un talón, de pie.</translation>
    </message>
    <message>
        <source>5 several full raises, 4 fewer or lower, 3 or less: none.</source>
        <translation>5 varias elevaciones completas, 4 menos o más bajas, 3 o menos: ninguna.</translation>
    </message>
    <message>
        <source>Toes curled over your finger; pull them straight.</source>
        <translation>Dedos flexionados sobre el suyo; tire para enderezarlos.</translation>
    </message>
    <message>
        <source>On the side, upper leg straight and in line: lift; push down above the ankle.</source>
        <translation>De lado, pierna superior recta y alineada: eleve; empuje abajo por encima del tobillo.</translation>
    </message>
    <message>
        <source>Prone, knee bent: lift the thigh; push down on it.</source>
        <translation>En prono, rodilla flexionada: eleve el muslo; empújelo hacia abajo.</translation>
    </message>
    <message>
        <source>Push evenly and feel how the strength ends.</source>
        <translation>Empuje de forma constante y sienta cómo termina la fuerza.</translation>
    </message>
    <message>
        <source>Full for a moment, then suddenly let go; pain does this too.</source>
        <translation>Plena un momento y luego suelta de golpe; el dolor también lo hace.</translation>
    </message>
    <message>
        <source>Fork of 128 Hz on the great toe's end joint; eyes closed, ask when it stops.</source>
        <translation>Diapasón de 128 Hz en la articulación distal del dedo gordo; ojos cerrados, pregunte cuándo cesa.</translation>
    </message>
    <message>
        <source>Reduced: ends clearly before you or the other side. Absent: not felt.</source>
        <translation>Disminuido: cesa claramente antes que en usted o el otro lado. Ausente: no se nota.</translation>
    </message>
    <message>
        <source>Hold the great toe at its sides, move it a little up or down, eyes closed.</source>
        <translation>Tome el dedo gordo por los lados y muévalo un poco arriba o abajo, ojos cerrados.</translation>
    </message>
    <message>
        <source>More than one wrong in ten.</source>
        <translation>Más de un error en diez.</translation>
    </message>
    <message>
        <source>Seated, hands behind: straighten the knee slowly with the foot up.</source>
        <translation>Sentado, manos atrás: extienda la rodilla despacio con el pie arriba.</translation>
    </message>
    <message>
        <source>Leg pain: the familiar pain below the knee or down the leg. A stretched hamstring is not positive.</source>
        <translation>Dolor de pierna: el dolor conocido bajo la rodilla o pierna abajo. El estiramiento isquiotibial no es positivo.</translation>
    </message>
    <message>
        <source>Seated, slouch, chin down, straighten the knee, foot up; then let the head up.</source>
        <translation>Sentado, encorvado, barbilla abajo, extienda la rodilla, pie arriba; luego suba la cabeza.</translation>
    </message>
    <message>
        <source>Leg pain: the familiar pain comes on and eases as the head comes up.</source>
        <translation>Dolor de pierna: aparece el dolor conocido y cede al subir la cabeza.</translation>
    </message>
    <message>
        <source>Lying, knee straight and held: raise the leg slowly by the heel until it hurts.</source>
        <translation>Tumbado, rodilla recta y sujeta: eleve la pierna despacio por el talón hasta que duela.</translation>
    </message>
    <message>
        <source>Leg pain: the familiar leg pain comes on. Pain in the back or a tight hamstring alone is named as such.</source>
        <translation>Dolor de pierna: aparece el dolor conocido. Solo dolor de espalda o isquiotibiales tensos se anota como tal.</translation>
    </message>
    <message>
        <source>Angle between leg and couch where the familiar pain began.</source>
        <translation>Ángulo entre pierna y camilla donde empezó el dolor conocido.</translation>
    </message>
    <message>
        <source>The angle in degrees.</source>
        <translation>El ángulo en grados.</translation>
    </message>
    <message>
        <source>Lower the raised leg until the pain has just gone, then push the foot up.</source>
        <translation>Baje la pierna hasta que el dolor acabe de irse y entonces empuje el pie arriba.</translation>
    </message>
    <message>
        <source>The familiar leg pain is back.</source>
        <translation>Vuelve el dolor conocido de la pierna.</translation>
    </message>
    <message>
        <source>Raise the leg that does not hurt.</source>
        <translation>Eleve la pierna que no duele.</translation>
    </message>
    <message>
        <source>The familiar pain comes on in the other leg. Record it at the leg that was raised.</source>
        <translation>El dolor conocido aparece en la otra pierna. Regístrelo en la pierna elevada.</translation>
    </message>
    <message>
        <source>At the angle of pain bend the knee a little until it eases, then press behind the knee.</source>
        <translation>En el ángulo del dolor flexione un poco la rodilla hasta aliviar y presione detrás de la rodilla.</translation>
    </message>
    <message>
        <source>The familiar pain runs up or down the leg.</source>
        <translation>El dolor conocido recorre la pierna arriba o abajo.</translation>
    </message>
    <message>
        <source>Prone, knee bent: lift the thigh off the couch.</source>
        <translation>En prono, rodilla flexionada: eleve el muslo de la camilla.</translation>
    </message>
    <message>
        <source>The familiar pain down the front of the thigh; a tight thigh muscle is not positive.</source>
        <translation>El dolor conocido por delante del muslo; un músculo tenso no es positivo.</translation>
    </message>
    <message>
        <source>Watch the trunk while the seated leg is straightened.</source>
        <translation>Observe el tronco mientras se extiende la pierna sentado.</translation>
    </message>
    <message>
        <source>The patient leans back on the hands to ease it.</source>
        <translation>El paciente se echa atrás sobre las manos para aliviarlo.</translation>
    </message>
    <message>
        <source>Seated, thigh still: swing the foot outward; read the angle of the shin.</source>
        <translation>Sentado, muslo quieto: lleve el pie hacia fuera; lea el ángulo de la espinilla.</translation>
    </message>
    <message>
        <source>The angle where the pelvis begins to move.</source>
        <translation>El ángulo en que la pelvis empieza a moverse.</translation>
    </message>
    <message>
        <source>Seated, thigh still: swing the foot inward.</source>
        <translation>Sentado, muslo quieto: lleve el pie hacia dentro.</translation>
    </message>
    <message>
        <source>Ask at the end of both rotations.</source>
        <translation>Pregunte al final de ambas rotaciones.</translation>
    </message>
    <message>
        <source>Pain in the groin, or the pain the patient came with.</source>
        <translation>Dolor en la ingle o el dolor por el que vino el paciente.</translation>
    </message>
    <message>
        <source>Lying, leg straight: roll the whole leg in and out with flat hands.</source>
        <translation>Tumbado, pierna recta: ruede toda la pierna adentro y afuera con las manos planas.</translation>
    </message>
    <message>
        <source>Groin pain or the familiar pain.</source>
        <translation>Dolor inguinal o el dolor conocido.</translation>
    </message>
    <message>
        <source>Lying, ankle on the other knee: let the knee sink out, steady the pelvis, press gently.</source>
        <translation>Tumbado, tobillo sobre la otra rodilla: deje caer la rodilla, sujete la pelvis, presione suave.</translation>
    </message>
    <message>
        <source>Familiar pain; groin speaks for the hip, low back at the side for the sacroiliac joint.</source>
        <translation>Dolor conocido; la ingle habla de la cadera, la zona lumbar lateral de la sacroilíaca.</translation>
    </message>
    <message>
        <source>Lying, hip bent fully, brought across and turned in.</source>
        <translation>Tumbado, cadera flexionada del todo, cruzada y girada adentro.</translation>
    </message>
    <message>
        <source>Familiar groin pain.</source>
        <translation>Dolor inguinal conocido.</translation>
    </message>
    <message>
        <source>Lying: press both front hip bones outward and back, slowly and long.</source>
        <translation>Tumbado: presione ambas espinas ilíacas anteriores afuera y atrás, lento y prolongado.</translation>
    </message>
    <message>
        <source>The familiar pain, not a local soreness.</source>
        <translation>El dolor conocido, no una molestia local.</translation>
    </message>
    <message>
        <source>On the side: press the upper hip bone straight down.</source>
        <translation>De lado: presione el hueso ilíaco superior recto hacia abajo.</translation>
    </message>
    <message>
        <source>The familiar pain.</source>
        <translation>El dolor conocido.</translation>
    </message>
    <message>
        <source>Lying, hip at a right angle, hand under the sacrum: push along the thigh.</source>
        <translation>Tumbado, cadera en ángulo recto, mano bajo el sacro: empuje a lo largo del muslo.</translation>
    </message>
    <message>
        <source>The familiar pain on that side.</source>
        <translation>El dolor conocido de ese lado.</translation>
    </message>
    <message>
        <source>At the edge of the couch: one knee to the chest, the other leg over the edge; press both apart.</source>
        <translation>Al borde de la camilla: una rodilla al pecho, la otra pierna fuera; presione ambas en sentidos opuestos.</translation>
    </message>
    <message>
        <source>The familiar pain at the sacroiliac joint; record its side.</source>
        <translation>El dolor conocido en la sacroilíaca; registre su lado.</translation>
    </message>
    <message>
        <source>Prone: press the middle of the sacrum straight down.</source>
        <translation>En prono: presione el centro del sacro recto hacia abajo.</translation>
    </message>
    <message>
        <source>Tap behind and below the head of the fibula, knee bent.</source>
        <translation>Percuta detrás y debajo de la cabeza del peroné, rodilla flexionada.</translation>
    </message>
    <message>
        <source>Tingling toward the outer shin or the top of the foot.</source>
        <translation>Hormigueo hacia la espinilla externa o el dorso del pie.</translation>
    </message>
    <message>
        <source>Tap behind and below the inner ankle.</source>
        <translation>Percuta detrás y debajo del tobillo interno.</translation>
    </message>
    <message>
        <source>Tingling into the sole.</source>
        <translation>Hormigueo en la planta.</translation>
    </message>
    <message>
        <source>Tap a thumb's breadth inside and below the front hip bone.</source>
        <translation>Percuta a un pulgar por dentro y debajo de la espina ilíaca anterior.</translation>
    </message>
    <message>
        <source>Tingling over the outer thigh.</source>
        <translation>Hormigueo en el muslo externo.</translation>
    </message>
    <message>
        <source>Two or three fingers on top of the foot, outside the great toe's tendon.</source>
        <translation>Dos o tres dedos sobre el dorso del pie, por fuera del tendón del dedo gordo.</translation>
    </message>
    <message>
        <source>Absent in some healthy people: feel behind the inner ankle too.</source>
        <translation>Ausente en algunos sanos: palpe también tras el tobillo interno.</translation>
    </message>
    <message>
        <source>Behind the inner ankle, foot relaxed.</source>
        <translation>Detrás del tobillo interno, pie relajado.</translation>
    </message>
    <message>
        <source>Reduced or absent against the other side.</source>
        <translation>Disminuido o ausente respecto al otro lado.</translation>
    </message>
    <message>
        <source>In the middle of the groin crease.</source>
        <translation>En el centro del pliegue inguinal.</translation>
    </message>
    <message>
        <source>Higher ankle pressure of that leg divided by the higher arm pressure, lying, after rest.</source>
        <translation>La mayor presión del tobillo de esa pierna dividida por la mayor del brazo, tumbado, tras reposo.</translation>
    </message>
    <message>
        <source>The ratio.</source>
        <translation>El cociente.</translation>
    </message>
    <message>
        <source>Lying straight: tape from the front hip bone to the tip of the inner ankle.</source>
        <translation>Tumbado recto: cinta de la espina ilíaca anterior a la punta del tobillo interno.</translation>
    </message>
    <message>
        <source>The length in centimeters.</source>
        <translation>La longitud en centímetros.</translation>
    </message>
    <message>
        <source>Tape at the same distance above both kneecaps, muscles relaxed; note the distance.</source>
        <translation>Cinta a la misma distancia sobre ambas rótulas, músculos relajados; anote la distancia.</translation>
    </message>
    <message>
        <source>The girth in centimeters.</source>
        <translation>El perímetro en centímetros.</translation>
    </message>
    <message>
        <source>Tape at the thickest place, foot hanging.</source>
        <translation>Cinta en la parte más gruesa, pie colgando.</translation>
    </message>
    <message>
        <source>With consent and a chaperone; gloved finger, at rest.</source>
        <translation>Con consentimiento y acompañante; dedo enguantado, en reposo.</translation>
    </message>
    <message>
        <source>Lax against what is usual for age. A normal tone does not rule out a compressed cauda equina.</source>
        <translation>Laxo respecto a lo habitual para la edad. Un tono normal no descarta una cola de caballo comprimida.</translation>
    </message>
    <message>
        <source>Ask to squeeze as if holding on.</source>
        <translation>Pida apretar como para aguantar.</translation>
    </message>
    <message>
        <source>Weak or none.</source>
        <translation>Débil o nula.</translation>
    </message>
    <message>
        <source>Stroke the skin beside the anus with a blunt point.</source>
        <translation>Roce la piel junto al ano con una punta roma.</translation>
    </message>
    <message>
        <source>No visible twitch.</source>
        <translation>Sin contracción visible.</translation>
    </message>
    <message>
        <source>Draw a pin up the trunk from the groin, on both sides and beside the spine.</source>
        <translation>Suba un alfiler por el tronco desde la ingle, a ambos lados y junto a la columna.</translation>
    </message>
    <message>
        <source>A height above which it suddenly feels sharp.</source>
        <translation>Una altura por encima de la cual de pronto pincha.</translation>
    </message>
    <message>
        <source>Lying, knees up: feel deep above the navel with both hands.</source>
        <translation>Tumbado, rodillas arriba: palpe hondo sobre el ombligo con ambas manos.</translation>
    </message>
    <message>
        <source>A pulsating width that pushes the hands apart.</source>
        <translation>Una anchura pulsátil que separa las manos.</translation>
    </message>
    <message>
        <source>Lying, hand under the heel of the weak side: ask to push that leg down, then to lift the other.</source>
        <translation>Tumbado, mano bajo el talón del lado débil: pida empujar esa pierna abajo y luego elevar la otra.</translation>
    </message>
    <message>
        <source>The weak leg pushes down strongly while the other lifts.</source>
        <translation>La pierna débil empuja fuerte abajo mientras la otra se eleva.</translation>
    </message>
    <message>
        <source>Watch how the patient sits, stands and changes position before you ask anything.</source>
        <translation>Observe cómo el paciente se sienta, está de pie y cambia de postura antes de preguntar.</translation>
    </message>
    <message>
        <source>Shifting, leaning on hands or unable to sit or lie: uncomfortable. Crying out, pale or sweating: marked distress.</source>
        <translation>Se mueve, se apoya o no puede sentarse o tumbarse: incómodo. Grita, pálido o sudoroso: malestar intenso.</translation>
    </message>
    <message>
        <source>From the side, bare to the buttocks, weight on both feet: look at the hollow of the low back.</source>
        <translation>De lado, descubierto hasta los glúteos, peso en ambos pies: mire el hueco lumbar.</translation>
    </message>
    <message>
        <source>Flattened or deepened against what is usual for age and build.</source>
        <translation>Aplanado o más hondo de lo habitual para edad y constitución.</translation>
    </message>
    <message>
        <source>Look at the back, buttocks and the whole leg in good light, front and back.</source>
        <translation>Mire espalda, glúteos y toda la pierna con buena luz, por delante y por detrás.</translation>
    </message>
    <message>
        <source>Scars, blisters, or a dimple, tuft of hair or swelling in the midline.</source>
        <translation>Cicatrices, ampollas, o un hoyuelo, mechón de pelo o bulto en la línea media.</translation>
    </message>
    <message>
        <source>Look at and beside the midline from neck to sacrum.</source>
        <translation>Mire la línea media y junto a ella, del cuello al sacro.</translation>
    </message>
    <message>
        <source>Any fresh bruise or graze over the spine.</source>
        <translation>Cualquier hematoma o rozadura reciente sobre la columna.</translation>
    </message>
    <message>
        <source>Where there are blisters or scabs in one band: say along which strip of skin they run.</source>
        <translation>Donde haya ampollas o costras en una banda: diga qué franja de piel siguen.</translation>
    </message>
    <message>
        <source>One strip on one side; name it.</source>
        <translation>Una franja de un lado; nómbrela.</translation>
    </message>
    <message>
        <source>Lying, both calves relaxed: compare size, warmth and tenderness; measure where in doubt.</source>
        <translation>Tumbado, pantorrillas relajadas: compare grosor, calor y dolor; mida si duda.</translation>
    </message>
    <message>
        <source>One calf clearly thicker, warmer or tender deep in its middle.</source>
        <translation>Una pantorrilla claramente más gruesa, caliente o dolorosa en su centro.</translation>
    </message>
    <message>
        <source>Two inclinometers, one over the last thoracic, one over the first sacral spine, set to zero standing; bend forward and take the difference.</source>
        <translation>Dos inclinómetros, uno sobre la última dorsal y otro sobre la primera sacra, a cero de pie; inclínese y tome la diferencia.</translation>
    </message>
    <message>
        <source>The angle of the lumbar spine in degrees.</source>
        <translation>El ángulo de la columna lumbar en grados.</translation>
    </message>
    <message>
        <source>The same two places, bending backward with hands on the hips.</source>
        <translation>Los mismos puntos, inclinándose atrás con las manos en las caderas.</translation>
    </message>
    <message>
        <source>Feet together, no twist: slide the hand down the outside of the thigh; read the inclinometer over the last thoracic spine.</source>
        <translation>Pies juntos, sin girar: deslice la mano por fuera del muslo; lea el inclinómetro sobre la última dorsal.</translation>
    </message>
    <message>
        <source>The angle in degrees for each side.</source>
        <translation>El ángulo en grados de cada lado.</translation>
    </message>
    <message>
        <source>Ask during the side bend what hurts and where.</source>
        <translation>Pregunte durante la inclinación qué duele y dónde.</translation>
    </message>
    <message>
        <source>Back or leg, as for the forward bend; record the side to which the trunk bends.</source>
        <translation>Espalda o pierna, como en la flexión; registre el lado al que se inclina el tronco.</translation>
    </message>
    <message>
        <source>Seated with the pelvis held: turn the shoulders to each side.</source>
        <translation>Sentado con la pelvis sujeta: gire los hombros a cada lado.</translation>
    </message>
    <message>
        <source>The angle of the shoulders against the pelvis in degrees.</source>
        <translation>El ángulo de los hombros respecto a la pelvis en grados.</translation>
    </message>
    <message>
        <source>Ask at the end of each turn what hurts.</source>
        <translation>Pregunte al final de cada giro qué duele.</translation>
    </message>
    <message>
        <source>Back or leg; record the side to which the trunk turns.</source>
        <translation>Espalda o pierna; registre el lado al que gira el tronco.</translation>
    </message>
    <message>
        <source>Bent forward with palms together: lay the inclinometer across the back at its highest place.</source>
        <translation>Inclinado con las palmas juntas: ponga el inclinómetro a través de la espalda en su punto más alto.</translation>
    </message>
    <message>
        <source>The tilt in degrees.</source>
        <translation>La inclinación en grados.</translation>
    </message>
    <message>
        <source>Thumb on the bony point under the dimple, light then firm.</source>
        <translation>Pulgar en el punto óseo bajo el hoyuelo, suave y luego firme.</translation>
    </message>
    <message>
        <source>The familiar pain, clearly more than on the other side.</source>
        <translation>El dolor conocido, claramente mayor que en el otro lado.</translation>
    </message>
    <message>
        <source>On the side, hip slightly bent: press the outer point of the hip and just behind it.</source>
        <translation>De lado, cadera algo flexionada: presione el punto externo de la cadera y justo detrás.</translation>
    </message>
    <message>
        <source>The familiar pain over the bone.</source>
        <translation>El dolor conocido sobre el hueso.</translation>
    </message>
    <message>
        <source>Pinch or roll the skin of the low back lightly over a wide area.</source>
        <translation>Pellizque o ruede suavemente la piel lumbar en un área amplia.</translation>
    </message>
    <message>
        <source>Pain over a wide area from the light touch alone.</source>
        <translation>Dolor en área amplia por el solo tacto ligero.</translation>
    </message>
    <message>
        <source>Press deeply at several places of low back, pelvis and chest wall.</source>
        <translation>Presione hondo en varios puntos de la zona lumbar, pelvis y pared torácica.</translation>
    </message>
    <message>
        <source>Tender across places no one structure joins.</source>
        <translation>Dolor en lugares que ninguna estructura une.</translation>
    </message>
    <message>
        <source>Standing: press lightly on the top of the head; pain in the neck does not count.</source>
        <translation>De pie: presione levemente la coronilla; el dolor de cuello no cuenta.</translation>
    </message>
    <message>
        <source>Low back pain from the light pressure.</source>
        <translation>Dolor lumbar por la presión leve.</translation>
    </message>
    <message>
        <source>Standing, feet together: turn shoulders and pelvis together as one piece.</source>
        <translation>De pie, pies juntos: gire hombros y pelvis a la vez, en bloque.</translation>
    </message>
    <message>
        <source>Low back pain although the spine does not turn. Root pain from a stretched nerve does not count.</source>
        <translation>Dolor lumbar aunque la columna no gira. El dolor radicular por estiramiento no cuenta.</translation>
    </message>
    <message>
        <source>Watch face, voice and posture through the whole examination; culture and fear change them.</source>
        <translation>Observe cara, voz y postura en toda la exploración; la cultura y el miedo las cambian.</translation>
    </message>
    <message>
        <source>A reaction out of proportion, seen more than once.</source>
        <translation>Una reacción desproporcionada, vista más de una vez.</translation>
    </message>
    <message>
        <source>Test strength group by group and feel how it fails.</source>
        <translation>Explore la fuerza grupo a grupo y sienta cómo falla.</translation>
    </message>
    <message>
        <source>Jerky giving way in many groups that no root or nerve explains.</source>
        <translation>Cesiones bruscas en muchos grupos que ninguna raíz ni nervio explica.</translation>
    </message>
    <message>
        <source>Map the numb area with the patient's eyes closed.</source>
        <translation>Delimite la zona adormecida con los ojos cerrados.</translation>
    </message>
    <message>
        <source>A whole leg or half the body, with an edge no root, nerve or length explains.</source>
        <translation>Toda una pierna o medio cuerpo, con un borde que ninguna raíz, nervio o longitud explica.</translation>
    </message>
    <message>
        <source>Let the patient walk barefoot on a hard floor and listen.</source>
        <translation>Que camine descalzo sobre suelo duro y escuche.</translation>
    </message>
    <message>
        <source>The forefoot slaps down after the heel, or the toes drag.</source>
        <translation>El antepié golpea tras el talón, o los dedos arrastran.</translation>
    </message>
    <message>
        <source>Watch several steps from the front and from the side.</source>
        <translation>Observe varios pasos de frente y de lado.</translation>
    </message>
    <message>
        <source>A shortened or uneven step of one leg.</source>
        <translation>Un paso acortado o desigual de una pierna.</translation>
    </message>
    <message>
        <source>Squat as deep as comfortable and rise without hands; stand by.</source>
        <translation>Agáchese hasta donde sea cómodo y levántese sin manos; quédese al lado.</translation>
    </message>
    <message>
        <source>Difficult: with a hand or not deep. Unable: cannot rise.</source>
        <translation>Con dificultad: con una mano o poco profundo. Imposible: no se levanta.</translation>
    </message>
    <message>
        <source>A few small hops on each leg; not with suspected fracture or severe pain.</source>
        <translation>Unos saltitos en cada pierna; no si se sospecha fractura o hay dolor intenso.</translation>
    </message>
    <message>
        <source>A sharp, well-placed pain in bone, groin or back.</source>
        <translation>Dolor agudo y localizado en hueso, ingle o espalda.</translation>
    </message>
    <message>
        <source>Ask after each weak movement whether pain stopped it.</source>
        <translation>Pregunte tras cada movimiento débil si el dolor lo detuvo.</translation>
    </message>
    <message>
        <source>Pain that starts before full effort.</source>
        <translation>Dolor que empieza antes del esfuerzo pleno.</translation>
    </message>
    <message>
        <source>Backs of your hands on both legs from knee to toes, compare color lying.</source>
        <translation>Dorso de las manos en ambas piernas de la rodilla a los dedos; compare el color tumbado.</translation>
    </message>
    <message>
        <source>One leg clearly colder or paler.</source>
        <translation>Una pierna claramente más fría o pálida.</translation>
    </message>
    <message>
        <source>Look between the toes, at the heel and over bony points.</source>
        <translation>Mire entre los dedos, en el talón y sobre salientes óseos.</translation>
    </message>
    <message>
        <source>An open place, a black toe or dry dead skin.</source>
        <translation>Una zona abierta, un dedo negro o piel seca muerta.</translation>
    </message>
    <message>
        <source>Straighten the seated leg slowly; read the angle between thigh and shin where the familiar pain begins.</source>
        <translation>Extienda despacio la pierna sentado; lea el ángulo entre muslo y pierna donde empieza el dolor conocido.</translation>
    </message>
    <message>
        <source>The angle in degrees; a straight knee is the end.</source>
        <translation>El ángulo en grados; la rodilla recta es el final.</translation>
    </message>
    <message>
        <source>Lying, other leg flat: bend the hip with the knee bent until the pelvis moves.</source>
        <translation>Tumbado, otra pierna plana: flexione la cadera con la rodilla doblada hasta que la pelvis se mueva.</translation>
    </message>
    <message>
        <source>The angle in degrees where the pelvis begins to move.</source>
        <translation>El ángulo en grados en que la pelvis empieza a moverse.</translation>
    </message>
    <message>
        <source>Grip and finger spread, arm reflexes, quick taps of thumb and finger on both sides.</source>
        <translation>Prensión y separación de dedos, reflejos de los brazos, golpeteo rápido de pulgar e índice en ambos lados.</translation>
    </message>
    <message>
        <source>Weak, brisk or clumsy beyond what age explains.</source>
        <translation>Débil, vivo o torpe más de lo que explica la edad.</translation>
    </message>
    <message>
        <source>Ear or mouth thermometer, after some minutes indoors.</source>
        <translation>Termómetro de oído o boca, tras unos minutos en interior.</translation>
    </message>
    <message>
        <source>The reading in degrees Celsius.</source>
        <translation>La lectura en grados Celsius.</translation>
    </message>
    <message>
        <source>After five minutes of rest, count for half a minute and double it.</source>
        <translation>Tras cinco minutos de reposo, cuente medio minuto y duplique.</translation>
    </message>
    <message>
        <source>Beats a minute.</source>
        <translation>Latidos por minuto.</translation>
    </message>
    <message>
        <source>Seated, arm at heart height, cuff of the right size, after five minutes of rest.</source>
        <translation>Sentado, brazo a la altura del corazón, manguito adecuado, tras cinco minutos de reposo.</translation>
    </message>
    <message>
        <source>The upper figure.</source>
        <translation>La cifra superior.</translation>
    </message>
    <message>
        <source>From the same reading.</source>
        <translation>De la misma lectura.</translation>
    </message>
    <message>
        <source>The lower figure.</source>
        <translation>La cifra inferior.</translation>
    </message>
    <message>
        <source>Barefoot, heels to the wall.</source>
        <translation>Descalzo, talones contra la pared.</translation>
    </message>
    <message>
        <source>Centimeters.</source>
        <translation>Centímetros.</translation>
    </message>
    <message>
        <source>Light clothes, no shoes.</source>
        <translation>Ropa ligera, sin zapatos.</translation>
    </message>
    <message>
        <source>Kilograms.</source>
        <translation>Kilogramos.</translation>
    </message>
    <message>
        <source>Add the ticked sentences of the 24.</source>
        <translation>Sume las frases marcadas de las 24.</translation>
    </message>
    <message>
        <source>0 to 24; more is worse.</source>
        <translation>0 a 24; más es peor.</translation>
    </message>
    <message>
        <source>Add the section scores, divide by five times the sections answered, times one hundred.</source>
        <translation>Sume las secciones, divida por cinco veces las respondidas y multiplique por cien.</translation>
    </message>
    <message>
        <source>0 to 100 percent; more is worse.</source>
        <translation>0 a 100 por ciento; más es peor.</translation>
    </message>
    <message>
        <source>Look the raw total up in the table of the short form used.</source>
        <translation>Busque el total bruto en la tabla del formulario breve usado.</translation>
    </message>
    <message>
        <source>A T-score: 50 is the average, 10 its spread; more is worse.</source>
        <translation>Una puntuación T: 50 es la media, 10 su dispersión; más es peor.</translation>
    </message>
    <message>
        <source>Ultrasound of the bladder within minutes of passing water.</source>
        <translation>Ecografía de la vejiga minutos después de orinar.</translation>
    </message>
    <message>
        <source>The volume left in milliliters. A small residual does not rule out a compressed cauda equina.</source>
        <translation>El volumen residual en mililitros. Un residuo pequeño no descarta una cola de caballo comprimida.</translation>
    </message>
    <message>
        <source>Eyes closed, a wisp of cotton or a fingertip without stroking, here and at the same place of the other leg.</source>
        <translation>Ojos cerrados, un algodón o la yema sin frotar, aquí y en el mismo lugar de la otra pierna.</translation>
    </message>
    <message>
        <source>Less or no feeling against the other side or the trunk; heightened where it stings or burns.</source>
        <translation>Menos o ninguna sensibilidad respecto al otro lado o el tronco; aumentada donde pica o quema.</translation>
    </message>
    <message>
        <source>Eyes closed, a fresh disposable point, sharp and blunt in mixed order, here and at the same place of the other leg.</source>
        <translation>Ojos cerrados, una punta desechable nueva, aguda y roma en orden mezclado, aquí y en el mismo lugar de la otra pierna.</translation>
    </message>
    <message>
        <source>Less sharp, not sharp at all, or unpleasantly sharp against the other side or the trunk.</source>
        <translation>Menos agudo, nada agudo o desagradablemente agudo respecto al otro lado o el tronco.</translation>
    </message>
    <message>
        <source>Injection</source>
        <translation>Inyección</translation>
    </message>
    <message>
        <source>Surgery</source>
        <translation>Cirugía</translation>
    </message>
    <message>
        <source>Therapy started</source>
        <translation>Terapia iniciada</translation>
    </message>
    <message>
        <source>Therapy ended</source>
        <translation>Terapia terminada</translation>
    </message>
    <message>
        <source>Medication started</source>
        <translation>Medicación iniciada</translation>
    </message>
    <message>
        <source>Medication ended</source>
        <translation>Medicación terminada</translation>
    </message>
    <message>
        <source>Imaging</source>
        <translation>Imagen</translation>
    </message>
    <message>
        <source>Fall or accident</source>
        <translation>Caída o accidente</translation>
    </message>
    <message>
        <source>Change of work</source>
        <translation>Cambio de trabajo</translation>
    </message>
    <message>
        <source>Follow-up</source>
        <translation>Control</translation>
    </message>
</context>
</TS>

<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>QObject</name>
    <message>
        <source>%1 regions</source>
        <translation>%1 zonas</translation>
    </message>
</context>
<context>
    <name>Summary</name>
    <message>
        <source>Words changed by %1.</source>
        <translation>Texto modificado por %1.</translation>
    </message>
</context>
<context>
    <name>rhizograph::app</name>
    <message>
        <source>worse</source>
        <translation>peor</translation>
    </message>
    <message>
        <source>new</source>
        <translation>nuevo</translation>
    </message>
    <message>
        <source>better</source>
        <translation>mejor</translation>
    </message>
    <message>
        <source>resolved</source>
        <translation>resuelto</translation>
    </message>
    <message>
        <source>same</source>
        <translation>igual</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>cambiado</translation>
    </message>
    <message>
        <source>not comparable</source>
        <translation>no comparable</translation>
    </message>
    <message>
        <source>alike</source>
        <translation>iguales</translation>
    </message>
    <message>
        <source>differs</source>
        <translation>difiere</translation>
    </message>
    <message>
        <source>differs, %1</source>
        <translation>difiere, %1</translation>
    </message>
    <message>
        <source>not examined</source>
        <translation>no explorado</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>about %1 cm²</source>
        <translation>unos %1 cm²</translation>
    </message>
    <message>
        <source>%1 worse</source>
        <translation>%1 peor</translation>
    </message>
    <message>
        <source>%1 new</source>
        <translation>%1 nuevos</translation>
    </message>
    <message>
        <source>%1 better</source>
        <translation>%1 mejor</translation>
    </message>
    <message>
        <source>%1 resolved</source>
        <translation>%1 resueltos</translation>
    </message>
    <message>
        <source>%1 changed</source>
        <translation>%1 cambiados</translation>
    </message>
    <message>
        <source>No change beyond measurement error</source>
        <translation>Sin cambios mayores que el error de medida</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Prueba</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Lado</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambio</translation>
    </message>
    <message>
        <source>What counts</source>
        <translation>Qué cuenta</translation>
    </message>
    <message>
        <source>Less feeling, %1</source>
        <translation>Menos sensibilidad, %1</translation>
    </message>
    <message>
        <source>%1 the same</source>
        <translation>%1 iguales</translation>
    </message>
    <message>
        <source>%1 not comparable</source>
        <translation>%1 no comparables</translation>
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
        <source>Difference</source>
        <translation>Diferencia</translation>
    </message>
    <message>
        <source>No difference beyond measurement error</source>
        <translation>Sin diferencias mayores que el error de medida</translation>
    </message>
    <message>
        <source>1 difference between the sides</source>
        <translation>1 diferencia entre los lados</translation>
    </message>
    <message>
        <source>%1 differences between the sides</source>
        <translation>%1 diferencias entre los lados</translation>
    </message>
    <message>
        <source>%1 alike</source>
        <translation>%1 iguales</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>normal</source>
        <translation>normal</translation>
    </message>
    <message>
        <source>reduced</source>
        <translation>disminuido</translation>
    </message>
    <message>
        <source>marked</source>
        <translation>marcado</translation>
    </message>
    <message>
        <source>heightened</source>
        <translation>aumentado</translation>
    </message>
    <message>
        <source>Not testable, %1</source>
        <translation>No valorable, %1</translation>
    </message>
    <message>
        <source>nothing to go on yet</source>
        <translation>sin datos todavía</translation>
    </message>
    <message>
        <source>fits one site well</source>
        <translation>encaja bien con un lugar</translation>
    </message>
    <message>
        <source>fits one site in part</source>
        <translation>encaja en parte con un lugar</translation>
    </message>
    <message>
        <source>fits no one site</source>
        <translation>no encaja con ningún lugar</translation>
    </message>
    <message>
        <source>strong</source>
        <translation>fuerte</translation>
    </message>
    <message>
        <source>moderate</source>
        <translation>moderado</translation>
    </message>
    <message>
        <source>weak</source>
        <translation>débil</translation>
    </message>
    <message>
        <source>little</source>
        <translation>escaso</translation>
    </message>
    <message>
        <source>Emergency</source>
        <translation>Emergencia</translation>
    </message>
    <message>
        <source>Urgent</source>
        <translation>Urgente</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Decision support for a licensed clinician, not a diagnosis.</source>
        <translation>Ayuda a la decisión para profesionales autorizados, no un diagnóstico.</translation>
    </message>
    <message>
        <source> of 10</source>
        <translation> de 10</translation>
    </message>
    <message>
        <source> of 24</source>
        <translation> de 24</translation>
    </message>
    <message>
        <source>both sides</source>
        <translation>ambos lados</translation>
    </message>
    <message>
        <source>not testable, %1</source>
        <translation>no valorable, %1</translation>
    </message>
    <message>
        <source>under 1 %</source>
        <translation>menos de 1 %</translation>
    </message>
    <message>
        <source>over 99 %</source>
        <translation>más de 99 %</translation>
    </message>
    <message>
        <source>woman</source>
        <translation>mujer</translation>
    </message>
    <message>
        <source>man</source>
        <translation>hombre</translation>
    </message>
    <message>
        <source>other</source>
        <translation>otro</translation>
    </message>
    <message>
        <source>%1 y</source>
        <translation>%1 a</translation>
    </message>
    <message>
        <source>Not begun</source>
        <translation>Sin empezar</translation>
    </message>
    <message>
        <source>Intake, %1 recorded</source>
        <translation>Admisión, %1 registrados</translation>
    </message>
    <message>
        <source>In the room</source>
        <translation>En la sala</translation>
    </message>
    <message>
        <source>To review</source>
        <translation>Por revisar</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>Firmada</translation>
    </message>
    <message>
        <source>opened by %1</source>
        <translation>abierta por %1</translation>
    </message>
    <message>
        <source>with %1</source>
        <translation>con %1</translation>
    </message>
    <message>
        <source>last change %1</source>
        <translation>último cambio %1</translation>
    </message>
    <message>
        <source>drafted %1</source>
        <translation>redactada %1</translation>
    </message>
    <message>
        <source>signed %1</source>
        <translation>firmada %1</translation>
    </message>
    <message>
        <source>1 red sign</source>
        <translation>1 signo de alarma</translation>
    </message>
    <message>
        <source>%1 red signs</source>
        <translation>%1 signos de alarma</translation>
    </message>
    <message>
        <source>1 visit</source>
        <translation>1 visita</translation>
    </message>
    <message>
        <source>%1 visits</source>
        <translation>%1 visitas</translation>
    </message>
    <message>
        <source>Red sign not acknowledged: %1</source>
        <translation>Signo de alarma no confirmado: %1</translation>
    </message>
    <message>
        <source>Warning questions not asked: %1. The page says so.</source>
        <translation>Preguntas de alarma no hechas: %1. La hoja lo indica.</translation>
    </message>
    <message>
        <source>%1: the findings changed after these words were written.</source>
        <translation>%1: los hallazgos cambiaron después de escribir este texto.</translation>
    </message>
    <message>
        <source>No plan is written.</source>
        <translation>No hay ningún plan escrito.</translation>
    </message>
    <message>
        <source>no longer in the record (%1)</source>
        <translation>ya no está en el registro (%1)</translation>
    </message>
    <message>
        <source>Clinic created</source>
        <translation>Consulta creada</translation>
    </message>
    <message>
        <source>Signed in</source>
        <translation>Entrada</translation>
    </message>
    <message>
        <source>Sign-in failed</source>
        <translation>Entrada fallida</translation>
    </message>
    <message>
        <source>Visit opened</source>
        <translation>Visita abierta</translation>
    </message>
    <message>
        <source>Handed out</source>
        <translation>Entregado</translation>
    </message>
    <message>
        <source>Printed</source>
        <translation>Impreso</translation>
    </message>
    <message>
        <source>Setting changed</source>
        <translation>Ajuste cambiado</translation>
    </message>
    <message>
        <source>User added</source>
        <translation>Usuario añadido</translation>
    </message>
    <message>
        <source>User changed</source>
        <translation>Usuario cambiado</translation>
    </message>
    <message>
        <source>Passphrase changed</source>
        <translation>Frase de paso cambiada</translation>
    </message>
    <message>
        <source>Visit signed</source>
        <translation>Visita firmada</translation>
    </message>
    <message>
        <source>Addendum written</source>
        <translation>Adenda escrita</translation>
    </message>
    <message>
        <source>Duplicate joined</source>
        <translation>Duplicado unido</translation>
    </message>
    <message>
        <source>Duplicate parted</source>
        <translation>Duplicado separado</translation>
    </message>
    <message>
        <source>Patient added</source>
        <translation>Paciente añadido</translation>
    </message>
    <message>
        <source>Patient corrected</source>
        <translation>Paciente corregido</translation>
    </message>
    <message>
        <source>Visit begun</source>
        <translation>Visita empezada</translation>
    </message>
    <message>
        <source>Erased</source>
        <translation>Borrado</translation>
    </message>
    <message>
        <source>Backed up</source>
        <translation>Copiado</translation>
    </message>
    <message>
        <source>Restored</source>
        <translation>Restaurado</translation>
    </message>
    <message>
        <source>Verified</source>
        <translation>Verificado</translation>
    </message>
    <message>
        <source>Unsaved changes brought back</source>
        <translation>Cambios sin guardar recuperados</translation>
    </message>
    <message>
        <source>Event written</source>
        <translation>Suceso escrito</translation>
    </message>
    <message>
        <source>Imported</source>
        <translation>Importado</translation>
    </message>
    <message>
        <source>1 finding worse</source>
        <translation>1 hallazgo peor</translation>
    </message>
    <message>
        <source>%1 findings worse</source>
        <translation>%1 hallazgos peores</translation>
    </message>
    <message>
        <source>Follow-up passed</source>
        <translation>Revisión vencida</translation>
    </message>
    <message>
        <source>Not signed</source>
        <translation>Sin firmar</translation>
    </message>
    <message>
        <source>follow-up due %1</source>
        <translation>revisión prevista %1</translation>
    </message>
    <message>
        <source>%1 visits not signed</source>
        <translation>%1 visitas sin firmar</translation>
    </message>
    <message>
        <source>not signed</source>
        <translation>sin firmar</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>ninguna aún</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Elegir</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>%1 with a red sign</source>
        <translation>%1 con signo de alarma</translation>
    </message>
    <message>
        <source>%1 follow-ups passed</source>
        <translation>%1 revisiones vencidas</translation>
    </message>
    <message>
        <source>%1 not signed</source>
        <translation>%1 sin firmar</translation>
    </message>
    <message>
        <source>the first %1 of %2</source>
        <translation>los primeros %1 de %2</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Given name</source>
        <translation>Nombre de pila</translation>
    </message>
    <message>
        <source>Family name</source>
        <translation>Apellido</translation>
    </message>
    <message>
        <source>Record number</source>
        <translation>Número de historia</translation>
    </message>
    <message>
        <source>Birth date</source>
        <translation>Fecha de nacimiento</translation>
    </message>
    <message>
        <source>Sex</source>
        <translation>Sexo</translation>
    </message>
    <message>
        <source>Contact</source>
        <translation>Contacto</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Observaciones</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::AngleDial</name>
    <message>
        <source>Angle</source>
        <translation>Ángulo</translation>
    </message>
    <message>
        <source>Turn the hand, or type the degrees</source>
        <translation>Gire la aguja o escriba los grados</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::AuditPage</name>
    <message>
        <source>Back to the settings</source>
        <translation>Volver a los ajustes</translation>
    </message>
    <message>
        <source>Audit</source>
        <translation>Auditoría</translation>
    </message>
    <message>
        <source>Name, day or action</source>
        <translation>Nombre, día o acción</translation>
    </message>
    <message>
        <source>Narrow the audit down</source>
        <translation>Acotar la auditoría</translation>
    </message>
    <message>
        <source>Audit, newest first</source>
        <translation>Auditoría, lo más reciente primero</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Whom</source>
        <translation>A quién</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>Older entries</source>
        <translation>Entradas anteriores</translation>
    </message>
    <message>
        <source>nobody signed in</source>
        <translation>nadie ha entrado</translation>
    </message>
    <message>
        <source>%1 entries, the newest first</source>
        <translation>%1 entradas, la más reciente primero</translation>
    </message>
    <message>
        <source>%1 of %2 entries</source>
        <translation>%1 de %2 entradas</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::AuditWords</name>
    <message>
        <source>%1, visit of %2</source>
        <translation>%1, visita del %2</translation>
    </message>
    <message>
        <source>%1 entries</source>
        <translation>%1 entradas</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::ChangeList</name>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>Shows its curve</source>
        <translation>Muestra su curva</translation>
    </message>
    <message>
        <source>What changed since the visit before</source>
        <translation>Qué cambió desde la visita anterior</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::ChangeTable</name>
    <message>
        <source>Shows or hides them</source>
        <translation>Los muestra u oculta</translation>
    </message>
    <message>
        <source>Goes to the finding</source>
        <translation>Va al hallazgo</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::ComparePage</name>
    <message>
        <source>Visit %1, %2</source>
        <translation>Visita %1, %2</translation>
    </message>
    <message>
        <source>A difference smaller than the error of measurement is called the same. Hold the pointer over a row for the source of its threshold.</source>
        <translation>Una diferencia menor que el error de medida se llama igual. Mantenga el puntero sobre una fila para ver la fuente de su umbral.</translation>
    </message>
    <message>
        <source>What is compared</source>
        <translation>Qué se compara</translation>
    </message>
    <message>
        <source>Right against left</source>
        <translation>Derecha contra izquierda</translation>
    </message>
    <message>
        <source>Against an earlier visit</source>
        <translation>Contra una visita anterior</translation>
    </message>
    <message>
        <source>Layer of the figures</source>
        <translation>Capa de las figuras</translation>
    </message>
    <message>
        <source>Compare with: %1</source>
        <translation>Comparar con: %1</translation>
    </message>
    <message>
        <source>Visit %1</source>
        <translation>Visita %1</translation>
    </message>
    <message>
        <source>There is no earlier visit to compare with</source>
        <translation>No hay visita anterior con la que comparar</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>View of the figures</source>
        <translation>Vista de las figuras</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Frente</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Soles</source>
        <translation>Plantas</translation>
    </message>
    <message>
        <source>Saddle</source>
        <translation>Silla de montar</translation>
    </message>
    <message>
        <source>No change of the skin where both visits examined it.</source>
        <translation>Sin cambios de la piel donde ambas visitas la exploraron.</translation>
    </message>
    <message>
        <source>Outlined: worse in full, better broken.</source>
        <translation>Contorno: peor continuo, mejor discontinuo.</translation>
    </message>
    <message>
        <source>In other views: %1 changed.</source>
        <translation>En otras vistas: %1 cambiados.</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::EraseDialog</name>
    <message>
        <source>Erase for good</source>
        <translation>Borrar para siempre</translation>
    </message>
    <message>
        <source>Erase %1 and everything recorded?</source>
        <translation>¿Borrar a %1 y todo lo registrado?</translation>
    </message>
    <message>
        <source>%1, signed ones too, are removed for good. The audit keeps that it was done, by whom and why, but no name. Backups made before still hold the person until they are rotated out.</source>
        <translation>%1, también las firmadas, se eliminan para siempre. La auditoría conserva que se hizo, por quién y por qué, pero ningún nombre. Las copias anteriores contienen a la persona hasta que caducan.</translation>
    </message>
    <message>
        <source>Reason, kept in the audit (without a name)</source>
        <translation>Motivo, queda en la auditoría (sin nombre)</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Type the name to confirm: %1</source>
        <translation>Escriba el nombre para confirmar: %1</translation>
    </message>
    <message>
        <source>Name of the patient</source>
        <translation>Nombre del paciente</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::EventsCard</name>
    <message>
        <source>Events</source>
        <translation>Sucesos</translation>
    </message>
    <message>
        <source>Day: 2026-03-02 or 2.3.2026</source>
        <translation>Día: 2026-03-02 o 2.3.2026</translation>
    </message>
    <message>
        <source>Day of the event</source>
        <translation>Día del suceso</translation>
    </message>
    <message>
        <source>Words, optional</source>
        <translation>Texto, opcional</translation>
    </message>
    <message>
        <source>Words about the event</source>
        <translation>Texto sobre el suceso</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>None noted.</source>
        <translation>Ninguno anotado.</translation>
    </message>
    <message>
        <source>awaited %1</source>
        <translation>previsto %1</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambio</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>Cambiar %1</translation>
    </message>
    <message>
        <source>Take %1 off the list</source>
        <translation>Quitar %1 de la lista</translation>
    </message>
    <message>
        <source>Add an event</source>
        <translation>Añadir un suceso</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>Change this event</source>
        <translation>Cambiar este suceso</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>The day is missing.</source>
        <translation>Falta el día.</translation>
    </message>
    <message>
        <source>“%1” is no day. Write it as 2026-03-02 or 2.3.2026.</source>
        <translation>«%1» no es un día. Escríbalo como 2026-03-02 o 2.3.2026.</translation>
    </message>
    <message>
        <source>Kind of event: %1</source>
        <translation>Tipo de suceso: %1</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::FigureCanvas</name>
    <message>
        <source>Left</source>
        <translation>Izquierda</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Derecha</translation>
    </message>
    <message>
        <source>A press moves on to the next state</source>
        <translation>Una pulsación pasa al siguiente estado</translation>
    </message>
    <message>
        <source>from the front</source>
        <translation>de frente</translation>
    </message>
    <message>
        <source>from behind</source>
        <translation>de espaldas</translation>
    </message>
    <message>
        <source>Feet, larger</source>
        <translation>Pies, ampliados</translation>
    </message>
    <message>
        <source>Soles</source>
        <translation>Plantas</translation>
    </message>
    <message>
        <source>Saddle</source>
        <translation>Silla de montar</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::FigurePair</name>
    <message>
        <source>Skin figures: %1</source>
        <translation>Figuras de piel: %1</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Izquierda</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Derecha</translation>
    </message>
    <message>
        <source>from behind</source>
        <translation>de espaldas</translation>
    </message>
    <message>
        <source>from the front</source>
        <translation>de frente</translation>
    </message>
    <message>
        <source>soles</source>
        <translation>plantas</translation>
    </message>
    <message>
        <source>saddle</source>
        <translation>silla de montar</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::Finder</name>
    <message>
        <source>Find an item by name</source>
        <translation>Buscar una prueba por nombre</translation>
    </message>
    <message>
        <source>Items found</source>
        <translation>Pruebas encontradas</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::FindingRow</name>
    <message>
        <source>%1, filled in bulk</source>
        <translation>%1, rellenado en bloque</translation>
    </message>
    <message>
        <source>not examined</source>
        <translation>no explorado</translation>
    </message>
    <message>
        <source>%1, more</source>
        <translation>%1, más</translation>
    </message>
    <message>
        <source>value of the last visit</source>
        <translation>valor de la última visita</translation>
    </message>
    <message>
        <source>was %1</source>
        <translation>era %1</translation>
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
        <source>%1: cleared</source>
        <translation>%1: borrado</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::GroupCard</name>
    <message>
        <source>Fewer</source>
        <translation>Menos</translation>
    </message>
    <message>
        <source>More (%1)</source>
        <translation>Más (%1)</translation>
    </message>
    <message>
        <source>All %1</source>
        <translation>Todo %1</translation>
    </message>
    <message>
        <source>Rest normal</source>
        <translation>Resto normal</translation>
    </message>
    <message>
        <source>%1 of %2 recorded</source>
        <translation>%1 de %2 registrados</translation>
    </message>
    <message>
        <source>, %1 in bulk</source>
        <translation>, %1 en bloque</translation>
    </message>
    <message>
        <source>when needed</source>
        <translation>si hace falta</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::HistorySheet</name>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Never recorded.</source>
        <translation>Nunca registrado.</translation>
    </message>
    <message>
        <source>Visit %1, %2</source>
        <translation>Visita %1, %2</translation>
    </message>
    <message>
        <source>cleared</source>
        <translation>borrado</translation>
    </message>
    <message>
        <source>, filled with the rest</source>
        <translation>, rellenado con el resto</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::HoldButton</name>
    <message>
        <source>Enter again</source>
        <translation>Intro otra vez</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::HowToSheet</name>
    <message>
        <source>What counts: %1</source>
        <translation>Qué cuenta: %1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Fuente: %1</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::ImpressionBar</name>
    <message>
        <source>No site yet</source>
        <translation>Sin lugar todavía</translation>
    </message>
    <message>
        <source>Impression: %1</source>
        <translation>Impresión: %1</translation>
    </message>
    <message>
        <source>; red signs: %1, of these not acknowledged: %2</source>
        <translation>; signos de alarma: %1, sin confirmar: %2</translation>
    </message>
    <message>
        <source>Open the impression</source>
        <translation>Abrir la impresión</translation>
    </message>
    <message>
        <source>Next test: %1</source>
        <translation>Siguiente prueba: %1</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::ImpressionFold</name>
    <message>
        <source>Opens the impression</source>
        <translation>Abre la impresión</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::ImpressionHead</name>
    <message>
        <source>Impression, %1</source>
        <translation>Impresión, %1</translation>
    </message>
    <message>
        <source>Fold the impression</source>
        <translation>Plegar la impresión</translation>
    </message>
    <message>
        <source>Impression</source>
        <translation>Impresión</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::ImpressionList</name>
    <message>
        <source>Impression</source>
        <translation>Impresión</translation>
    </message>
    <message>
        <source>Goes to the finding</source>
        <translation>Va al hallazgo</translation>
    </message>
    <message>
        <source>Shows its reasons and its skin</source>
        <translation>Muestra sus razones y su piel</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::JoinDialog</name>
    <message>
        <source>born %1</source>
        <translation>nacimiento %1</translation>
    </message>
    <message>
        <source>Join a duplicate</source>
        <translation>Unir un duplicado</translation>
    </message>
    <message>
        <source>Who else is %1?</source>
        <translation>¿Quién más es %1?</translation>
    </message>
    <message>
        <source>Name or record number</source>
        <translation>Nombre o número de historia</translation>
    </message>
    <message>
        <source>Search the duplicate</source>
        <translation>Buscar el duplicado</translation>
    </message>
    <message>
        <source>Entries that may be the same person</source>
        <translation>Entradas que pueden ser la misma persona</translation>
    </message>
    <message>
        <source>Join</source>
        <translation>Unir</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>No other entry matches.</source>
        <translation>Ninguna otra entrada coincide.</translation>
    </message>
    <message>
        <source>Choose the entry that is the same person.</source>
        <translation>Elija la entrada de la misma persona.</translation>
    </message>
    <message>
        <source>%1 (%2) will stand with %3, and no longer by itself. Nothing is rewritten: the two can be parted again.</source>
        <translation>%1 (%2) quedará con %3 y ya no por separado. Nada se reescribe: se pueden separar de nuevo.</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::Keypad</name>
    <message>
        <source>Erase the last digit</source>
        <translation>Borrar la última cifra</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Registrar</translation>
    </message>
    <message>
        <source>%1: cleared</source>
        <translation>%1: borrado</translation>
    </message>
    <message>
        <source>Type a number from %1 to %2.</source>
        <translation>Escriba un número de %1 a %2.</translation>
    </message>
    <message>
        <source>That is out of range: from %1 to %2.</source>
        <translation>Fuera de rango: de %1 a %2.</translation>
    </message>
    <message>
        <source>From %1 to %2.</source>
        <translation>De %1 a %2.</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::LayoutCard</name>
    <message>
        <source>Order of the steps</source>
        <translation>Orden de los pasos</translation>
    </message>
    <message>
        <source>Items that show at once</source>
        <translation>Pruebas que se muestran de entrada</translation>
    </message>
    <message>
        <source>The others wait behind More. What was recorded, what a red sign asks for and what the program suggests always comes forward.</source>
        <translation>Las demás esperan tras «Más». Lo registrado, lo que pide un signo de alarma y lo que sugiere el programa siempre aparece.</translation>
    </message>
    <message>
        <source>Find an item</source>
        <translation>Buscar una prueba</translation>
    </message>
    <message>
        <source>%1 earlier</source>
        <translation>%1 antes</translation>
    </message>
    <message>
        <source>%1 later</source>
        <translation>%1 después</translation>
    </message>
    <message>
        <source>Shows at once</source>
        <translation>De entrada</translation>
    </message>
    <message>
        <source>Behind More</source>
        <translation>Tras «Más»</translation>
    </message>
    <message>
        <source>%1 shows at once</source>
        <translation>%1 de entrada</translation>
    </message>
    <message>
        <source>No item by this name.</source>
        <translation>Ninguna prueba con ese nombre.</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::Legend</name>
    <message>
        <source>not examined</source>
        <translation>no explorado</translation>
    </message>
    <message>
        <source>filled in bulk</source>
        <translation>rellenado en bloque</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::ListDialog</name>
    <message>
        <source>Bring in a list of patients</source>
        <translation>Incorporar una lista de pacientes</translation>
    </message>
    <message>
        <source>What each column holds</source>
        <translation>Qué contiene cada columna</translation>
    </message>
    <message>
        <source>As they would be taken</source>
        <translation>Cómo se tomarían</translation>
    </message>
    <message>
        <source>Patients as they would be taken</source>
        <translation>Pacientes tal como se tomarían</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Record number</source>
        <translation>Número de historia</translation>
    </message>
    <message>
        <source>Birth date</source>
        <translation>Fecha de nacimiento</translation>
    </message>
    <message>
        <source>Sex</source>
        <translation>Sexo</translation>
    </message>
    <message>
        <source>Contact</source>
        <translation>Contacto</translation>
    </message>
    <message>
        <source>Rows that are left out</source>
        <translation>Filas omitidas</translation>
    </message>
    <message>
        <source>Rows that are left out and why</source>
        <translation>Filas omitidas y por qué</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Bring in</source>
        <translation>Incorporar</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Column %1 holds</source>
        <translation>La columna %1 contiene</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Omitida</translation>
    </message>
    <message>
        <source>How days are written</source>
        <translation>Cómo se escriben los días</translation>
    </message>
    <message>
        <source>Year, month, day</source>
        <translation>Año, mes, día</translation>
    </message>
    <message>
        <source>Day, month, year</source>
        <translation>Día, mes, año</translation>
    </message>
    <message>
        <source>Month, day, year</source>
        <translation>Mes, día, año</translation>
    </message>
    <message>
        <source>%1: %2 patients are ready, %3 rows are left out.</source>
        <translation>%1: %2 pacientes listos, %3 filas omitidas.</translation>
    </message>
    <message>
        <source>Bring in %1 patients</source>
        <translation>Incorporar %1 pacientes</translation>
    </message>
    <message>
        <source>Nothing was brought in. %1</source>
        <translation>No se incorporó nada. %1</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::MainWindow</name>
    <message>
        <source>Patients</source>
        <translation>Pacientes</translation>
    </message>
    <message>
        <source>Rhizograph cannot start</source>
        <translation>Rhizograph no puede iniciarse</translation>
    </message>
    <message>
        <source>Its medical knowledge cannot be read:
%1</source>
        <translation>No se puede leer su conocimiento médico:
%1</translation>
    </message>
    <message>
        <source>Rhizograph</source>
        <translation>Rhizograph</translation>
    </message>
    <message>
        <source>The clinic cannot be opened</source>
        <translation>No se puede abrir la consulta</translation>
    </message>
    <message>
        <source>Open a clinic</source>
        <translation>Abrir una consulta</translation>
    </message>
    <message>
        <source>Clinics (*.rhizo);;All files (*)</source>
        <translation>Consultas (*.rhizo);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>The clinic cannot be read</source>
        <translation>No se puede leer la consulta</translation>
    </message>
    <message>
        <source>Locked. The open visit is kept.</source>
        <translation>Bloqueado. La visita abierta se conserva.</translation>
    </message>
    <message>
        <source>Locked.</source>
        <translation>Bloqueado.</translation>
    </message>
    <message>
        <source>Settings …</source>
        <translation>Ajustes …</translation>
    </message>
    <message>
        <source>Bring back unsaved changes …</source>
        <translation>Recuperar cambios sin guardar …</translation>
    </message>
    <message>
        <source>Switch user</source>
        <translation>Cambiar de usuario</translation>
    </message>
    <message>
        <source>Quit</source>
        <translation>Salir</translation>
    </message>
    <message>
        <source>Theme</source>
        <translation>Tema</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Oscuro</translation>
    </message>
    <message>
        <source>High contrast</source>
        <translation>Alto contraste</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>Tamaño del texto</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Find an item …</source>
        <translation>Buscar una prueba …</translation>
    </message>
    <message>
        <source>In the room</source>
        <translation>En la sala</translation>
    </message>
    <message>
        <source>To review</source>
        <translation>Por revisar</translation>
    </message>
    <message>
        <source>Bring back unsaved changes</source>
        <translation>Recuperar cambios sin guardar</translation>
    </message>
    <message>
        <source>Unsaved changes (*.unsaved);;All files (*)</source>
        <translation>Cambios sin guardar (*.unsaved);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Changes brought back: %1.</source>
        <translation>Cambios recuperados: %1.</translation>
    </message>
    <message>
        <source>Rhizograph: %1</source>
        <translation>Rhizograph: %1</translation>
    </message>
    <message>
        <source>Not everything is saved</source>
        <translation>No todo está guardado</translation>
    </message>
    <message>
        <source>Changes of this visit that are not on disk yet: %1.</source>
        <translation>Cambios de esta visita aún no en disco: %1.</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Reintentar</translation>
    </message>
    <message>
        <source>Save a copy and close</source>
        <translation>Guardar una copia y cerrar</translation>
    </message>
    <message>
        <source>Stay here</source>
        <translation>Quedarse aquí</translation>
    </message>
    <message>
        <source>Save a sealed copy of what is not saved</source>
        <translation>Guardar una copia sellada de lo no guardado</translation>
    </message>
    <message>
        <source>Unsaved changes (*.unsaved)</source>
        <translation>Cambios sin guardar (*.unsaved)</translation>
    </message>
    <message>
        <source>A sealed copy is in %1. When the record can be written again, choose “Bring back unsaved changes” in the menu.</source>
        <translation>Hay una copia sellada en %1. Cuando se pueda escribir de nuevo el registro, elija «Recuperar cambios sin guardar» en el menú.</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Entregar</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Show the tour</source>
        <translation>Mostrar el recorrido</translation>
    </message>
    <message>
        <source>Hand out everything on this patient</source>
        <translation>Entregar todo sobre este paciente</translation>
    </message>
    <message>
        <source>JSON (*.json)</source>
        <translation>JSON (*.json)</translation>
    </message>
    <message>
        <source>%1 was not written: %2.</source>
        <translation>%1 no se escribió: %2.</translation>
    </message>
    <message>
        <source>Everything on %1 is in %2, readable for whoever has the file. The audit notes it.</source>
        <translation>Todo sobre %1 está en %2, legible para quien tenga el archivo. La auditoría lo anota.</translation>
    </message>
    <message>
        <source>1 place</source>
        <translation>1 lugar</translation>
    </message>
    <message>
        <source>%1 places</source>
        <translation>%1 lugares</translation>
    </message>
    <message>
        <source>Visit %1: </source>
        <translation>Visita %1: </translation>
    </message>
    <message>
        <source>The backup %1 is whole, but the record it holds is damaged in %2. Older backups are kept; do not remove them.
%3</source>
        <translation>La copia %1 está íntegra, pero el registro que contiene está dañado en %2. Las copias anteriores se conservan; no las quite.
%3</translation>
    </message>
    <message>
        <source>Backed up: %1, %2, read back and verified (%3 visits).</source>
        <translation>Copiado: %1, %2, releído y verificado (%3 visitas).</translation>
    </message>
    <message>
        <source>The audit could not be written.</source>
        <translation>No se pudo escribir la auditoría.</translation>
    </message>
    <message>
        <source>Today’s backup is being made …</source>
        <translation>Se está haciendo la copia de hoy …</translation>
    </message>
    <message>
        <source>Today’s backup was not made.
%1</source>
        <translation>No se hizo la copia de hoy.
%1</translation>
    </message>
    <message>
        <source>Back up the clinic</source>
        <translation>Copiar la consulta</translation>
    </message>
    <message>
        <source>Backups (*%1)</source>
        <translation>Copias (*%1)</translation>
    </message>
    <message>
        <source>Being backed up …</source>
        <translation>Copiando …</translation>
    </message>
    <message>
        <source>Not backed up. %1</source>
        <translation>No copiado. %1</translation>
    </message>
    <message>
        <source>Folder for the daily backups</source>
        <translation>Carpeta de las copias diarias</translation>
    </message>
    <message>
        <source>Every entry is being recomputed …</source>
        <translation>Se recalcula cada entrada …</translation>
    </message>
    <message>
        <source>%1 visits, %2 entries, %3 lines of audit</source>
        <translation>%1 visitas, %2 entradas, %3 líneas de auditoría</translation>
    </message>
    <message>
        <source>The record is as it was written: %1.</source>
        <translation>El registro está como se escribió: %1.</translation>
    </message>
    <message>
        <source>Damaged in %1 (%2). Keep the older backups.
%3</source>
        <translation>Dañado en %1 (%2). Conserve las copias anteriores.
%3</translation>
    </message>
    <message>
        <source>A backup is being made or the record verified. Wait until it is done.</source>
        <translation>Se está copiando o verificando el registro. Espere a que termine.</translation>
    </message>
    <message>
        <source>Restored as of %1, %2: %3 visits.</source>
        <translation>Restaurado a fecha de %1, %2: %3 visitas.</translation>
    </message>
    <message>
        <source>What stood here before is kept as %1.</source>
        <translation>Lo que había antes se conserva como %1.</translation>
    </message>
    <message>
        <source>An earlier visit, only to be read.</source>
        <translation>Una visita anterior, solo para leer.</translation>
    </message>
    <message>
        <source>A list of patients</source>
        <translation>Una lista de pacientes</translation>
    </message>
    <message>
        <source>Tables (*.csv *.tsv *.txt)</source>
        <translation>Tablas (*.csv *.tsv *.txt)</translation>
    </message>
    <message>
        <source>What %1 recorded is not saved yet, so only they can go on with the open visit.</source>
        <translation>Lo que %1 registró aún no está guardado; por eso solo esa persona puede seguir con la visita abierta.</translation>
    </message>
    <message>
        <source>This visit was signed meanwhile: it can only be read now.</source>
        <translation>Esta visita se firmó entretanto: ahora solo puede leerse.</translation>
    </message>
    <message>
        <source>Your role in this clinic was changed.</source>
        <translation>Su función en esta clínica ha cambiado.</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::MarkLegend</name>
    <message>
        <source>Legend: %1</source>
        <translation>Leyenda: %1</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::NoteEditor</name>
    <message>
        <source>Note on %1</source>
        <translation>Nota sobre %1</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>%1: note</source>
        <translation>%1: nota</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::PagePreview</name>
    <message>
        <source>The page as it will print</source>
        <translation>La hoja tal como se imprimirá</translation>
    </message>
    <message>
        <source>Changes the words</source>
        <translation>Cambia el texto</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::PainDrawing</name>
    <message>
        <source>Rub out</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>Pain drawing</source>
        <translation>Dibujo del dolor</translation>
    </message>
    <message>
        <source>draw with a finger or pen</source>
        <translation>dibuje con un dedo o lápiz</translation>
    </message>
    <message>
        <source>1 region marked</source>
        <translation>1 zona marcada</translation>
    </message>
    <message>
        <source>%1 regions marked</source>
        <translation>%1 zonas marcadas</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::PatientForm</name>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Record number</source>
        <translation>Número de historia</translation>
    </message>
    <message>
        <source>Birth date</source>
        <translation>Fecha de nacimiento</translation>
    </message>
    <message>
        <source>1974-05-30 or 30.5.1974</source>
        <translation>1974-05-30 o 30.5.1974</translation>
    </message>
    <message>
        <source>Sex</source>
        <translation>Sexo</translation>
    </message>
    <message>
        <source>Woman</source>
        <translation>Mujer</translation>
    </message>
    <message>
        <source>Man</source>
        <translation>Hombre</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Otro</translation>
    </message>
    <message>
        <source>Not stated</source>
        <translation>No consta</translation>
    </message>
    <message>
        <source>Contact</source>
        <translation>Contacto</translation>
    </message>
    <message>
        <source>optional</source>
        <translation>opcional</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Observaciones</translation>
    </message>
    <message>
        <source>Save and begin a visit</source>
        <translation>Guardar y empezar visita</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>New patient</source>
        <translation>Nuevo paciente</translation>
    </message>
    <message>
        <source>Correct the patient&apos;s entry</source>
        <translation>Corregir los datos del paciente</translation>
    </message>
    <message>
        <source>The patient needs a name.</source>
        <translation>El paciente necesita un nombre.</translation>
    </message>
    <message>
        <source>“%1” is no birth date. Write year-month-day (1974-05-30) or day.month.year (30.5.1974).</source>
        <translation>«%1» no es una fecha de nacimiento. Escriba año-mes-día (1974-05-30) o día.mes.año (30.5.1974).</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::PatientPage</name>
    <message>
        <source>Back to the patients</source>
        <translation>Volver a los pacientes</translation>
    </message>
    <message>
        <source>Correct entry</source>
        <translation>Corregir datos</translation>
    </message>
    <message>
        <source>New visit</source>
        <translation>Nueva visita</translation>
    </message>
    <message>
        <source>Visits</source>
        <translation>Visitas</translation>
    </message>
    <message>
        <source>record %1</source>
        <translation>historia %1</translation>
    </message>
    <message>
        <source>born %1</source>
        <translation>nacimiento %1</translation>
    </message>
    <message>
        <source>Visit %1</source>
        <translation>Visita %1</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Leer</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>No visit yet.</source>
        <translation>Ninguna visita todavía.</translation>
    </message>
    <message>
        <source>More for this patient</source>
        <translation>Más para este paciente</translation>
    </message>
    <message>
        <source>1 duplicate joined</source>
        <translation>1 duplicado unido</translation>
    </message>
    <message>
        <source>%1 duplicates joined</source>
        <translation>%1 duplicados unidos</translation>
    </message>
    <message>
        <source>Join a duplicate …</source>
        <translation>Unir un duplicado …</translation>
    </message>
    <message>
        <source>Part again: %1</source>
        <translation>Separar de nuevo: %1</translation>
    </message>
    <message>
        <source>Hand out everything …</source>
        <translation>Entregar todo …</translation>
    </message>
    <message>
        <source>Erase for good …</source>
        <translation>Borrar para siempre …</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::PatientStrip</name>
    <message>
        <source>Back to the patients</source>
        <translation>Volver a los pacientes</translation>
    </message>
    <message>
        <source>Record %1</source>
        <translation>Historia %1</translation>
    </message>
    <message>
        <source>Visit %1</source>
        <translation>Visita %1</translation>
    </message>
    <message>
        <source>Visit %1, %2</source>
        <translation>Visita %1, %2</translation>
    </message>
    <message>
        <source>Undo %1</source>
        <translation>Deshacer: %1</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Redo %1</source>
        <translation>Rehacer: %1</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::PatientsPage</name>
    <message>
        <source>Begin</source>
        <translation>Empezar</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Revisar</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Leer</translation>
    </message>
    <message>
        <source>Name or record number</source>
        <translation>Nombre o número de historia</translation>
    </message>
    <message>
        <source>Search patients by name or record number</source>
        <translation>Buscar pacientes por nombre o número de historia</translation>
    </message>
    <message>
        <source>New patient</source>
        <translation>Nuevo paciente</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>To review</source>
        <translation>Por revisar</translation>
    </message>
    <message>
        <source>Unsigned</source>
        <translation>Sin firmar</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Todos</translation>
    </message>
    <message>
        <source>Patients</source>
        <translation>Pacientes</translation>
    </message>
    <message>
        <source>in the order of the day</source>
        <translation>en el orden del día</translation>
    </message>
    <message>
        <source>No visits today. Search for a patient, or add a new one.</source>
        <translation>Hoy no hay visitas. Busque un paciente o añada uno nuevo.</translation>
    </message>
    <message>
        <source>Nothing waits for review.</source>
        <translation>Nada espera revisión.</translation>
    </message>
    <message>
        <source>Every visit is signed.</source>
        <translation>Todas las visitas están firmadas.</translation>
    </message>
    <message>
        <source>Visit %1</source>
        <translation>Visita %1</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Elegir</translation>
    </message>
    <message>
        <source>No visit yet</source>
        <translation>Ninguna visita todavía</translation>
    </message>
    <message>
        <source>the first %1; type more to narrow down</source>
        <translation>los primeros %1; escriba más para acotar</translation>
    </message>
    <message>
        <source>No patients yet.</source>
        <translation>Ningún paciente todavía.</translation>
    </message>
    <message>
        <source>Nobody by this name or number. New patient takes it over.</source>
        <translation>Nadie con este nombre o número. «Nuevo paciente» lo toma.</translation>
    </message>
    <message>
        <source>Needs a look</source>
        <translation>Requiere atención</translation>
    </message>
    <message>
        <source>Nobody: no open red sign, nothing worse, no follow-up passed, every visit signed.</source>
        <translation>Nadie: sin signos de alarma abiertos, nada peor, ninguna revisión vencida, todas las visitas firmadas.</translation>
    </message>
    <message>
        <source>From a list …</source>
        <translation>De una lista …</translation>
    </message>
    <message>
        <source>Bring in a list of patients</source>
        <translation>Incorporar una lista de pacientes</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::ProblemPage</name>
    <message>
        <source>Try again</source>
        <translation>Reintentar</translation>
    </message>
    <message>
        <source>Open another clinic …</source>
        <translation>Abrir otra consulta …</translation>
    </message>
    <message>
        <source>Quit</source>
        <translation>Salir</translation>
    </message>
    <message>
        <source>Restore a backup …</source>
        <translation>Restaurar una copia …</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::Rail</name>
    <message>
        <source>, %1 of %2 recorded</source>
        <translation>, %1 de %2 registrados</translation>
    </message>
    <message>
        <source>, holds something abnormal</source>
        <translation>, contiene algo anormal</translation>
    </message>
    <message>
        <source>, holds a red sign</source>
        <translation>, contiene un signo de alarma</translation>
    </message>
    <message>
        <source>Shows this page</source>
        <translation>Muestra esta página</translation>
    </message>
    <message>
        <source>Steps of the visit</source>
        <translation>Pasos de la visita</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::RecordCard</name>
    <message>
        <source>There is no backup in this folder yet.</source>
        <translation>Aún no hay copias en esta carpeta.</translation>
    </message>
    <message>
        <source>The newest is of %1, %2.</source>
        <translation>La más reciente es del %1, %2.</translation>
    </message>
    <message>
        <source>Record and backups</source>
        <translation>Registro y copias</translation>
    </message>
    <message>
        <source>Daily backups to keep</source>
        <translation>Copias diarias que guardar</translation>
    </message>
    <message>
        <source>Make none</source>
        <translation>Ninguna</translation>
    </message>
    <message>
        <source>Back up now …</source>
        <translation>Copiar ahora …</translation>
    </message>
    <message>
        <source>Another folder …</source>
        <translation>Otra carpeta …</translation>
    </message>
    <message>
        <source>Verify the record</source>
        <translation>Verificar el registro</translation>
    </message>
    <message>
        <source>Audit</source>
        <translation>Auditoría</translation>
    </message>
    <message>
        <source>Restore a backup …</source>
        <translation>Restaurar una copia …</translation>
    </message>
    <message>
        <source>Backups are encrypted and open only with a passphrase of their day. Each day’s goes to %1</source>
        <translation>Las copias están cifradas y solo se abren con una frase de paso de su día. La de cada día va a %1</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::RedSignBar</name>
    <message>
        <source>Emergency</source>
        <translation>Emergencia</translation>
    </message>
    <message>
        <source>Urgent</source>
        <translation>Urgente</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Show items</source>
        <translation>Ver hallazgos</translation>
    </message>
    <message>
        <source>Next red sign</source>
        <translation>Siguiente signo de alarma</translation>
    </message>
    <message>
        <source>Hold for a moment, or press Enter twice</source>
        <translation>Mantenga un momento o pulse Intro dos veces</translation>
    </message>
    <message>
        <source>Red sign, %1: %2</source>
        <translation>Signo de alarma, %1: %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Acknowledge</source>
        <translation>Confirmar</translation>
    </message>
    <message>
        <source>Acknowledge as %1</source>
        <translation>Confirmar como %1</translation>
    </message>
    <message>
        <source>Acknowledge the red sign as %1</source>
        <translation>Confirmar el signo de alarma como %1</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::RestorePage</name>
    <message>
        <source>Restore a backup</source>
        <translation>Restaurar una copia</translation>
    </message>
    <message>
        <source>Choose the backup …</source>
        <translation>Elegir la copia …</translation>
    </message>
    <message>
        <source>Administrator</source>
        <translation>Administrador</translation>
    </message>
    <message>
        <source>Passphrase of that day</source>
        <translation>Frase de paso de ese día</translation>
    </message>
    <message>
        <source>Also when it was damaged</source>
        <translation>También si estaba dañada</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Restaurar</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>The record of the backup takes the place of %1. What stands there now is kept beside it under another name.</source>
        <translation>El registro de la copia ocupa el lugar de %1. Lo que hay ahora se conserva al lado con otro nombre.</translation>
    </message>
    <message>
        <source>No backup is chosen yet.</source>
        <translation>Aún no se ha elegido copia.</translation>
    </message>
    <message>
        <source>Choose the backup</source>
        <translation>Elegir la copia</translation>
    </message>
    <message>
        <source>Backups (*%1);;All files (*)</source>
        <translation>Copias (*%1);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>%1, as of %2, %3</source>
        <translation>%1, a fecha de %2, %3</translation>
    </message>
    <message>
        <source>Checking and restoring …</source>
        <translation>Comprobando y restaurando …</translation>
    </message>
    <message>
        <source>Choose the backup first.</source>
        <translation>Elija primero la copia.</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::RowMenu</name>
    <message>
        <source>Both sides not testable</source>
        <translation>Ambos lados no valorables</translation>
    </message>
    <message>
        <source>How it is done</source>
        <translation>Cómo se hace</translation>
    </message>
    <message>
        <source>Not testable</source>
        <translation>No valorable</translation>
    </message>
    <message>
        <source>Change the note</source>
        <translation>Cambiar la nota</translation>
    </message>
    <message>
        <source>Add a note</source>
        <translation>Añadir una nota</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>%1: cleared</source>
        <translation>%1: borrado</translation>
    </message>
    <message>
        <source>%1: not testable</source>
        <translation>%1: no valorable</translation>
    </message>
    <message>
        <source>What it was before</source>
        <translation>Qué era antes</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::Rows</name>
    <message>
        <source>L</source>
        <translation>I</translation>
    </message>
    <message>
        <source>R</source>
        <translation>D</translation>
    </message>
    <message>
        <source>not examined</source>
        <translation>no explorado</translation>
    </message>
    <message>
        <source>right, left</source>
        <translation>derecha, izquierda</translation>
    </message>
    <message>
        <source>Less feeling</source>
        <translation>Menos sensibilidad</translation>
    </message>
    <message>
        <source>%1, about cm²</source>
        <translation>%1, unos cm²</translation>
    </message>
    <message>
        <source>impression, %</source>
        <translation>impresión, %</translation>
    </message>
    <message>
        <source>acknowledged by %1</source>
        <translation>confirmado por %1</translation>
    </message>
    <message>
        <source>Red sign, %1: %2 %3 %4</source>
        <translation>Signo de alarma, %1: %2 %3 %4</translation>
    </message>
    <message>
        <source>No site yet.</source>
        <translation>Sin lugar todavía.</translation>
    </message>
    <message>
        <source>No finding so far bears on a nerve, root or other cause. Until one does, nothing is named here: starting weights are not a finding.</source>
        <translation>Ningún hallazgo atañe aún a un nervio, una raíz u otra causa. Hasta entonces no se nombra nada: los pesos iniciales no son un hallazgo.</translation>
    </message>
    <message>
        <source>%1, %2 support, %3</source>
        <translation>%1, apoyo %2, %3</translation>
    </message>
    <message>
        <source>all other sites together</source>
        <translation>los demás lugares juntos</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>for</source>
        <translation>a favor</translation>
    </message>
    <message>
        <source>against</source>
        <translation>en contra</translation>
    </message>
    <message>
        <source>Reasons for and against %1</source>
        <translation>Razones a favor y en contra de %1</translation>
    </message>
    <message>
        <source>against: %1, %2 decibans</source>
        <translation>en contra: %1, %2 decibanes</translation>
    </message>
    <message>
        <source>for: %1, %2 decibans</source>
        <translation>a favor: %1, %2 decibanes</translation>
    </message>
    <message>
        <source>fewer reasons</source>
        <translation>menos razones</translation>
    </message>
    <message>
        <source>%1 more reasons</source>
        <translation>%1 razones más</translation>
    </message>
    <message>
        <source>Hard to explain:</source>
        <translation>Difícil de explicar:</translation>
    </message>
    <message>
        <source>Would fit the disc %1</source>
        <translation>Encajaría con el disco %1</translation>
    </message>
    <message>
        <source>; less often %1</source>
        <translation>; con menos frecuencia %1</translation>
    </message>
    <message>
        <source>, %1</source>
        <translation>, %1</translation>
    </message>
    <message>
        <source>low: %1</source>
        <translation>bajo: %1</translation>
    </message>
    <message>
        <source>not examined: %1</source>
        <translation>no explorado: %1</translation>
    </message>
    <message>
        <source>Screens, %1</source>
        <translation>Cribados, %1</translation>
    </message>
    <message>
        <source>Screen %1:</source>
        <translation>Cribado %1:</translation>
    </message>
    <message>
        <source>high</source>
        <translation>alto</translation>
    </message>
    <message>
        <source>raised</source>
        <translation>elevado</translation>
    </message>
    <message>
        <source>Warning questions not asked: %1</source>
        <translation>Preguntas de alarma no hechas: %1</translation>
    </message>
    <message>
        <source>Consistency:</source>
        <translation>Coherencia:</translation>
    </message>
    <message>
        <source>red-sign question, still open</source>
        <translation>pregunta de alarma, aún abierta</translation>
    </message>
    <message>
        <source>would tell most now</source>
        <translation>es lo que más informaría ahora</translation>
    </message>
    <message>
        <source>tells the sides apart for %1</source>
        <translation>distingue los lados en %1</translation>
    </message>
    <message>
        <source>parts %1 from %2</source>
        <translation>separa %1 de %2</translation>
    </message>
    <message>
        <source>Next tests</source>
        <translation>Siguientes pruebas</translation>
    </message>
    <message>
        <source>Next test: %1, %2</source>
        <translation>Siguiente prueba: %1, %2</translation>
    </message>
    <message>
        <source>nothing found yet</source>
        <translation>nada hallado aún</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::SettingsPage</name>
    <message>
        <source>Leave the settings</source>
        <translation>Salir de los ajustes</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>On this machine</source>
        <translation>En este equipo</translation>
    </message>
    <message>
        <source>Theme</source>
        <translation>Tema</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Oscuro</translation>
    </message>
    <message>
        <source>High contrast</source>
        <translation>Alto contraste</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>Tamaño del texto</translation>
    </message>
    <message>
        <source>Clinic</source>
        <translation>Consulta</translation>
    </message>
    <message>
        <source>Letterhead: the first line is the clinic&apos;s name</source>
        <translation>Membrete: la primera línea es el nombre de la consulta</translation>
    </message>
    <message>
        <source>Letterhead</source>
        <translation>Membrete</translation>
    </message>
    <message>
        <source>Lengths</source>
        <translation>Longitudes</translation>
    </message>
    <message>
        <source>Centimeters</source>
        <translation>Centímetros</translation>
    </message>
    <message>
        <source>Inches</source>
        <translation>Pulgadas</translation>
    </message>
    <message>
        <source>Strength grades</source>
        <translation>Grados de fuerza</translation>
    </message>
    <message>
        <source>Whole grades</source>
        <translation>Grados enteros</translation>
    </message>
    <message>
        <source>Also 4− and 4+</source>
        <translation>También 4− y 4+</translation>
    </message>
    <message>
        <source>Lock after</source>
        <translation>Bloquear tras</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>Lock the screen when nothing was touched for</source>
        <translation>Bloquear la pantalla si no se toca nada durante</translation>
    </message>
    <message>
        <source>Save for the clinic</source>
        <translation>Guardar para la consulta</translation>
    </message>
    <message>
        <source>Your passphrase</source>
        <translation>Su frase de paso</translation>
    </message>
    <message>
        <source>New passphrase</source>
        <translation>Nueva frase de paso</translation>
    </message>
    <message>
        <source>The same again</source>
        <translation>La misma otra vez</translation>
    </message>
    <message>
        <source>Change it</source>
        <translation>Cambiarla</translation>
    </message>
    <message>
        <source>Saved.</source>
        <translation>Guardado.</translation>
    </message>
    <message>
        <source>The two passphrases differ.</source>
        <translation>Las dos frases de paso son distintas.</translation>
    </message>
    <message>
        <source>Changed.</source>
        <translation>Cambiada.</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Phrases for the plan, one a line; the short ones become buttons</source>
        <translation>Frases para el plan, una por línea; las cortas serán botones</translation>
    </message>
    <message>
        <source>Phrases for the plan</source>
        <translation>Frases para el plan</translation>
    </message>
    <message>
        <source>Changing …</source>
        <translation>Cambiando …</translation>
    </message>
    <message>
        <source>Saved for the clinic.</source>
        <translation>Guardado para la consulta.</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::SetupPage</name>
    <message>
        <source>A new clinic</source>
        <translation>Una consulta nueva</translation>
    </message>
    <message>
        <source>The record will be kept, sealed, in %1</source>
        <translation>El registro se guardará, sellado, en %1</translation>
    </message>
    <message>
        <source>Name of the clinic</source>
        <translation>Nombre de la consulta</translation>
    </message>
    <message>
        <source>Your name (administrator)</source>
        <translation>Su nombre (administrador)</translation>
    </message>
    <message>
        <source>Passphrase, at least %1 characters</source>
        <translation>Frase de paso, al menos %1 caracteres</translation>
    </message>
    <message>
        <source>The same passphrase again</source>
        <translation>La misma frase de paso otra vez</translation>
    </message>
    <message>
        <source>Nobody can open the record without a passphrase. Keep this one safe: it cannot be recovered from the file.</source>
        <translation>Nadie puede abrir el registro sin frase de paso. Guárdela bien: no se puede recuperar del archivo.</translation>
    </message>
    <message>
        <source>Create the clinic</source>
        <translation>Crear la consulta</translation>
    </message>
    <message>
        <source>Creating …</source>
        <translation>Creando …</translation>
    </message>
    <message>
        <source>The clinic needs a name; it stands on every page.</source>
        <translation>La consulta necesita un nombre; figura en cada hoja.</translation>
    </message>
    <message>
        <source>The administrator needs a name.</source>
        <translation>El administrador necesita un nombre.</translation>
    </message>
    <message>
        <source>The two passphrases differ.</source>
        <translation>Las dos frases de paso son distintas.</translation>
    </message>
    <message>
        <source>The passphrase needs at least %1 characters.</source>
        <translation>La frase de paso necesita al menos %1 caracteres.</translation>
    </message>
    <message>
        <source>Restore a backup instead …</source>
        <translation>Restaurar una copia en su lugar …</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::SignInPage</name>
    <message>
        <source>Passphrase</source>
        <translation>Frase de paso</translation>
    </message>
    <message>
        <source>Sign in</source>
        <translation>Entrar</translation>
    </message>
    <message>
        <source>Opening …</source>
        <translation>Abriendo …</translation>
    </message>
    <message>
        <source>Type your passphrase.</source>
        <translation>Escriba su frase de paso.</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::SkinFigure</name>
    <message>
        <source>not examined</source>
        <translation>no explorado</translation>
    </message>
    <message>
        <source>about %1 cm²</source>
        <translation>unos %1 cm²</translation>
    </message>
    <message>
        <source>Layer</source>
        <translation>Capa</translation>
    </message>
    <message>
        <source>Show a territory</source>
        <translation>Mostrar un territorio</translation>
    </message>
    <message>
        <source>Points to touch</source>
        <translation>Puntos de toque</translation>
    </message>
    <message>
        <source>Shows where to touch for each level</source>
        <translation>Muestra dónde tocar para cada nivel</translation>
    </message>
    <message>
        <source>Mirror normal</source>
        <translation>Resto en espejo normal</translation>
    </message>
    <message>
        <source>Marks what is not examined on this layer as normal, the saddle left out</source>
        <translation>Marca lo no explorado de esta capa como normal, salvo la silla de montar</translation>
    </message>
    <message>
        <source>Enlarge</source>
        <translation>Ampliar</translation>
    </message>
    <message>
        <source>Skin figures</source>
        <translation>Figuras de piel</translation>
    </message>
    <message>
        <source>a tap moves on to the next</source>
        <translation>un toque pasa al siguiente</translation>
    </message>
    <message>
        <source>Whole figures</source>
        <translation>Figuras enteras</translation>
    </message>
    <message>
        <source>%1: rest normal</source>
        <translation>%1: resto normal</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguno</translation>
    </message>
    <message>
        <source>on both sides</source>
        <translation>en ambos lados</translation>
    </message>
    <message>
        <source>all on the left</source>
        <translation>todas a la izquierda</translation>
    </message>
    <message>
        <source>all on the right</source>
        <translation>todas a la derecha</translation>
    </message>
    <message>
        <source>Nothing examined on this layer</source>
        <translation>Nada explorado en esta capa</translation>
    </message>
    <message>
        <source>%1 of %2 regions examined, none abnormal</source>
        <translation>%1 de %2 zonas exploradas, ninguna anormal</translation>
    </message>
    <message>
        <source>not marked</source>
        <translation>sin marcar</translation>
    </message>
    <message>
        <source>less feeling: &lt;b&gt;%1&lt;/b&gt; of skin</source>
        <translation>menos sensibilidad: &lt;b&gt;%1&lt;/b&gt; de piel</translation>
    </message>
    <message>
        <source>visit %1</source>
        <translation>visita %1</translation>
    </message>
    <message>
        <source>last visit</source>
        <translation>última visita</translation>
    </message>
    <message>
        <source>none found</source>
        <translation>ninguna hallada</translation>
    </message>
    <message>
        <source>Left %1</source>
        <translation>%1, izquierda</translation>
    </message>
    <message>
        <source>Right %1</source>
        <translation>%1, derecha</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::StepPage</name>
    <message>
        <source>Rest of step normal</source>
        <translation>Resto del paso normal</translation>
    </message>
    <message>
        <source>Marks what shows on all pages of this step and is not examined as normal, in bulk</source>
        <translation>Marca en bloque como normal lo mostrado y no explorado de este paso</translation>
    </message>
    <message>
        <source>visit %1</source>
        <translation>visita %1</translation>
    </message>
    <message>
        <source>last visit</source>
        <translation>última visita</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::Strip</name>
    <message>
        <source>Lock the screen</source>
        <translation>Bloquear la pantalla</translation>
    </message>
    <message>
        <source>Lock (Ctrl+L)</source>
        <translation>Bloquear (Ctrl+L)</translation>
    </message>
    <message>
        <source>Menu</source>
        <translation>Menú</translation>
    </message>
    <message>
        <source>Menu (F10)</source>
        <translation>Menú (F10)</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::SummaryPage</name>
    <message>
        <source>Write the page as a PDF file</source>
        <translation>Escribir la hoja como archivo PDF</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>Archivos PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Writing %1 …</source>
        <translation>Escribiendo %1 …</translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation>Escrito en %1</translation>
    </message>
    <message>
        <source>Not written: %1</source>
        <translation>No escrito: %1</translation>
    </message>
    <message>
        <source>Print the page</source>
        <translation>Imprimir la hoja</translation>
    </message>
    <message>
        <source>Visit %1</source>
        <translation>Visita %1</translation>
    </message>
    <message>
        <source>Not printed: the printer could not be started.</source>
        <translation>No impreso: no se pudo iniciar la impresora.</translation>
    </message>
    <message>
        <source>Handed to the printer.</source>
        <translation>Enviado a la impresora.</translation>
    </message>
    <message>
        <source>Copied as text.</source>
        <translation>Copiado como texto.</translation>
    </message>
    <message>
        <source>signed</source>
        <translation>firmada</translation>
    </message>
    <message>
        <source>Added.</source>
        <translation>Añadido.</translation>
    </message>
    <message>
        <source>The audit could not be written: %1</source>
        <translation>No se pudo escribir la auditoría: %1</translation>
    </message>
    <message>
        <source>Stay active.</source>
        <translation>Mantenerse activo.</translation>
    </message>
    <message>
        <source>Review in 2 weeks.</source>
        <translation>Revisión en 2 semanas.</translation>
    </message>
    <message>
        <source>Return if worse.</source>
        <translation>Volver si empeora.</translation>
    </message>
    <message>
        <source>Told what would need same-day care.</source>
        <translation>Informado de lo que requiere atención el mismo día.</translation>
    </message>
    <message>
        <source>Exercises shown and written down.</source>
        <translation>Ejercicios enseñados y por escrito.</translation>
    </message>
    <message>
        <source>Imaging is not needed at present.</source>
        <translation>No se necesita imagen por ahora.</translation>
    </message>
    <message>
        <source>Imaging is requested.</source>
        <translation>Se solicita imagen.</translation>
    </message>
    <message>
        <source>Surgical opinion is requested.</source>
        <translation>Se solicita opinión quirúrgica.</translation>
    </message>
    <message>
        <source>read only</source>
        <translation>solo lectura</translation>
    </message>
    <message>
        <source>draft</source>
        <translation>borrador</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::SummaryPanel</name>
    <message>
        <source>Go there</source>
        <translation>Ir allí</translation>
    </message>
    <message>
        <source>Go there: %1</source>
        <translation>Ir allí: %1</translation>
    </message>
    <message>
        <source>Summary</source>
        <translation>Resumen</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>What was agreed and advised</source>
        <translation>Lo acordado y aconsejado</translation>
    </message>
    <message>
        <source>All phrases</source>
        <translation>Todas las frases</translation>
    </message>
    <message>
        <source>Show on the page</source>
        <translation>Mostrar en la hoja</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Figuras</translation>
    </message>
    <message>
        <source>Reasons</source>
        <translation>Razones</translation>
    </message>
    <message>
        <source>Items not examined</source>
        <translation>Lo no explorado</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
    <message>
        <source>PDF</source>
        <translation>PDF</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Texto</translation>
    </message>
    <message>
        <source>Write as PDF file</source>
        <translation>Escribir como archivo PDF</translation>
    </message>
    <message>
        <source>Copy as text</source>
        <translation>Copiar como texto</translation>
    </message>
    <message>
        <source>Sign and lock</source>
        <translation>Firmar y cerrar</translation>
    </message>
    <message>
        <source>Addendum</source>
        <translation>Adenda</translation>
    </message>
    <message>
        <source>What is to be added to the signed visit</source>
        <translation>Qué añadir a la visita firmada</translation>
    </message>
    <message>
        <source>Add to the signed visit</source>
        <translation>Añadir a la visita firmada</translation>
    </message>
    <message>
        <source>Before signing</source>
        <translation>Antes de firmar</translation>
    </message>
    <message>
        <source>Short form</source>
        <translation>Forma breve</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::Tour</name>
    <message>
        <source>Tour</source>
        <translation>Recorrido</translation>
    </message>
    <message>
        <source>Skip</source>
        <translation>Omitir</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Empezar</translation>
    </message>
    <message>
        <source>A visit in one minute</source>
        <translation>Una visita en un minuto</translation>
    </message>
    <message>
        <source>Six parts, ten seconds each. Escape leaves the tour at any time.</source>
        <translation>Seis partes, diez segundos cada una. Escape termina el recorrido en cualquier momento.</translation>
    </message>
    <message>
        <source>The steps</source>
        <translation>Los pasos</translation>
    </message>
    <message>
        <source>Take them in any order. A ring fills as you record; a mark says that something is abnormal.</source>
        <translation>En cualquier orden. Un anillo se llena al registrar; una marca indica algo anormal.</translation>
    </message>
    <message>
        <source>One press records</source>
        <translation>Una pulsación registra</translation>
    </message>
    <message>
        <source>A second press on the same value clears it. The patient&apos;s right stands on the left half, as when you face each other. Hold a button for a note, for not testable and for how the test is done.</source>
        <translation>Una segunda pulsación sobre el mismo valor lo borra. La derecha del paciente está en la mitad izquierda, como al estar frente a frente. Mantenga un botón para nota, no valorable y cómo se hace la prueba.</translation>
    </message>
    <message>
        <source>The rest normal</source>
        <translation>El resto normal</translation>
    </message>
    <message>
        <source>After what is abnormal, one press marks the rest of a card as normal. It stays visible as filled in bulk. What was not examined never looks normal.</source>
        <translation>Tras lo anormal, una pulsación marca el resto de la tarjeta como normal. Queda visible como rellenado en bloque. Lo no explorado nunca parece normal.</translation>
    </message>
    <message>
        <source>The impression</source>
        <translation>La impresión</translation>
    </message>
    <message>
        <source>What the findings speak for, why, and what to test next; each line leads to its item. It supports your decision and is no diagnosis.</source>
        <translation>Lo que indican los hallazgos, por qué y qué probar después; cada línea lleva a su prueba. Apoya su decisión y no es un diagnóstico.</translation>
    </message>
    <message>
        <source>Saved at once</source>
        <translation>Guardado al instante</translation>
    </message>
    <message>
        <source>Every press is on disk by itself. Undo takes back any step. The slash key finds an item by name; this tour stays in the menu.</source>
        <translation>Cada pulsación se guarda sola en disco. Deshacer retrocede cualquier paso. La tecla de barra busca una prueba por nombre; este recorrido queda en el menú.</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::TrendChart</name>
    <message>
        <source>%1, visit %2: %3</source>
        <translation>%1, visita %2: %3</translation>
    </message>
    <message>
        <source>Opens that visit, read only</source>
        <translation>Abre esa visita, solo lectura</translation>
    </message>
    <message>
        <source>Course over all visits</source>
        <translation>Evolución en todas las visitas</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Visita</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Shows the list of events</source>
        <translation>Muestra la lista de sucesos</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::TrendPage</name>
    <message>
        <source>All visits</source>
        <translation>Todas las visitas</translation>
    </message>
    <message>
        <source>Which measures</source>
        <translation>Qué medidas</translation>
    </message>
    <message>
        <source>Left and right</source>
        <translation>Izquierda y derecha</translation>
    </message>
    <message>
        <source>Scores only</source>
        <translation>Solo puntuaciones</translation>
    </message>
    <message>
        <source>Choose measures</source>
        <translation>Elegir medidas</translation>
    </message>
    <message>
        <source>There is one visit so far: a course needs two.</source>
        <translation>Hasta ahora hay una visita: una evolución necesita dos.</translation>
    </message>
    <message>
        <source>Left: solid line, filled dots. Right: dashed line, hollow dots. A triangle or diamond marks a change larger than its threshold. A gap: not examined. Decision support, not a diagnosis.</source>
        <translation>Izquierda: línea continua, puntos llenos. Derecha: discontinua, puntos huecos. Un triángulo o rombo marca un cambio mayor que su umbral. Un hueco: no explorado. Ayuda a la decisión, no un diagnóstico.</translation>
    </message>
    <message>
        <source>Course over all visits</source>
        <translation>Evolución en todas las visitas</translation>
    </message>
    <message>
        <source>Chart as PNG …</source>
        <translation>Gráfico como PNG …</translation>
    </message>
    <message>
        <source>Chart as SVG …</source>
        <translation>Gráfico como SVG …</translation>
    </message>
    <message>
        <source>Figures as CSV …</source>
        <translation>Cifras como CSV …</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Escrito: %1</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Sucesos</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>Exportar</translation>
    </message>
    <message>
        <source>A triangle or diamond marks a change larger than its threshold. A gap in a line: not examined at that visit. Press a point to open that visit, read only.</source>
        <translation>Un triángulo o rombo marca un cambio mayor que su umbral. Un hueco en una línea: no explorado en esa visita. Pulse un punto para abrir esa visita, solo lectura.</translation>
    </message>
    <message>
        <source>Recorded, but not in today&apos;s catalogue and so not shown: %1.</source>
        <translation>Registrado, pero no en el catálogo actual y por eso no mostrado: %1.</translation>
    </message>
    <message>
        <source>What changed</source>
        <translation>Qué cambió</translation>
    </message>
    <message>
        <source>Visit %1 to visit %2: %3</source>
        <translation>De la visita %1 a la visita %2: %3</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::UsersCard</name>
    <message>
        <source>Nurse</source>
        <translation>Enfermería</translation>
    </message>
    <message>
        <source>Clinician</source>
        <translation>Clínico</translation>
    </message>
    <message>
        <source>Reviewer</source>
        <translation>Revisor</translation>
    </message>
    <message>
        <source>Administrator</source>
        <translation>Administrador</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Add someone</source>
        <translation>Añadir a alguien</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Name of the new user</source>
        <translation>Nombre del nuevo usuario</translation>
    </message>
    <message>
        <source>Role of the new user</source>
        <translation>Rol del nuevo usuario</translation>
    </message>
    <message>
        <source>First passphrase</source>
        <translation>Primera frase de paso</translation>
    </message>
    <message>
        <source>First passphrase of the new user</source>
        <translation>Primera frase de paso del nuevo usuario</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>%1 (may no longer sign in)</source>
        <translation>%1 (ya no puede entrar)</translation>
    </message>
    <message>
        <source>Role of %1</source>
        <translation>Rol de %1</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Retirar</translation>
    </message>
    <message>
        <source>Let in again</source>
        <translation>Readmitir</translation>
    </message>
    <message>
        <source>%1 may no longer sign in</source>
        <translation>%1 ya no puede entrar</translation>
    </message>
    <message>
        <source>%1 may sign in again</source>
        <translation>%1 puede entrar de nuevo</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::VisitList</name>
    <message>
        <source>Patient</source>
        <translation>Paciente</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Visita</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Registrar</translation>
    </message>
    <message>
        <source>Where it stands</source>
        <translation>Estado</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::VisitPage</name>
    <message>
        <source>Try again</source>
        <translation>Reintentar</translation>
    </message>
    <message>
        <source>Save a copy …</source>
        <translation>Guardar una copia …</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Signed, read only</source>
        <translation>Firmada, solo lectura</translation>
    </message>
    <message>
        <source>Read only</source>
        <translation>Solo lectura</translation>
    </message>
    <message>
        <source>Saved</source>
        <translation>Guardado</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Guardando</translation>
    </message>
    <message>
        <source>Not recorded: %1</source>
        <translation>No registrado: %1</translation>
    </message>
    <message>
        <source>Saved %1</source>
        <translation>Guardado %1</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>No guardado</translation>
    </message>
    <message>
        <source>%1 What was recorded since is kept here (changes waiting: %2).</source>
        <translation>%1 Lo registrado desde entonces se conserva aquí (cambios en espera: %2).</translation>
    </message>
    <message>
        <source>Back to the course</source>
        <translation>Volver a la evolución</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::VisitSession</name>
    <message>
        <source>right</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>cleared</source>
        <translation>borrado</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::VisitWatch</name>
    <message>
        <source>nothing recorded</source>
        <translation>nada registrado</translation>
    </message>
    <message>
        <source>%1: %2 (was %3), by %4</source>
        <translation>%1: %2 (era %3), por %4</translation>
    </message>
    <message>
        <source>Changed by somebody else. %1</source>
        <translation>Cambiado por otra persona. %1</translation>
    </message>
    <message>
        <source>Somebody else wrote this plan: “%1” Before, it was: “%2”</source>
        <translation>Otra persona escribió este plan: «%1» Antes decía: «%2»</translation>
    </message>
    <message>
        <source>%1 Acknowledged by %2.</source>
        <translation>%1 Confirmado por %2.</translation>
    </message>
</context>
<context>
    <name>rhizograph::app::WordsEditor</name>
    <message>
        <source>Changed from the program&apos;s words</source>
        <translation>Distinto del texto del programa</translation>
    </message>
    <message>
        <source>What was not examined stays on the page.</source>
        <translation>Lo no explorado permanece en la hoja.</translation>
    </message>
    <message>
        <source>Use these words</source>
        <translation>Usar este texto</translation>
    </message>
    <message>
        <source>Back to the program&apos;s words</source>
        <translation>Volver al texto del programa</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Words of %1</source>
        <translation>Texto de %1</translation>
    </message>
    <message>
        <source>Nothing is changed.</source>
        <translation>Nada ha cambiado.</translation>
    </message>
</context>
<context>
    <name>rhizograph::window</name>
    <message>
        <source>Compare</source>
        <translation>Comparar</translation>
    </message>
    <message>
        <source>Trend</source>
        <translation>Evolución</translation>
    </message>
    <message>
        <source>Summary</source>
        <translation>Resumen</translation>
    </message>
</context>
</TS>

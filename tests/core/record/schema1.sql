-- A clinic of schema 1, every kind of row in it, as its tables stood. The passphrase of each user is the tests'.
pragma application_id = 1381648177;
pragma user_version = 1;
PRAGMA foreign_keys=OFF;
BEGIN TRANSACTION;
CREATE TABLE meta (
    key text primary key,
    value text not null
) strict;
INSERT INTO meta VALUES('schema','1');
INSERT INTO meta VALUES('clinic','64469da038ce3be7d8a45ee95c9cc4c6');
INSERT INTO meta VALUES('clinic_name','Clinic of the Nine Bridges');
INSERT INTO meta VALUES('created','2026-03-04T09:00:00Z');
INSERT INTO meta VALUES('patient_revision','5');
INSERT INTO meta VALUES('erasures','0');
CREATE TABLE setting (
    key text primary key,
    value text not null
) strict;
INSERT INTO setting VALUES('idle_minutes','7');
CREATE TABLE staff (
    id text primary key,
    name text not null,
    role text not null check (role in ('nurse', 'clinician', 'reviewer', 'administrator')),
    active integer not null check (active in (0, 1)),
    operations integer not null,
    memory integer not null,
    salt blob not null,
    wrapped blob not null,
    failures integer not null default 0,
    failed_at integer not null default 0,
    mac blob not null
) strict;
INSERT INTO staff VALUES('e054bf3374fd57152256bea7ff6bdc8e','Ada Thornfield','administrator',1,1,8192,X'18c06eda011dc3add6f86cdb9ec3b79d',X'02ecd593cd94ee4ed789612fc49840840b71ae5daaa7e568099f4aa3ea349f076442b7922ed3f1ae6ae79f9ff6a15bec07258d60dc5928d4f2dceca644d4745f35738208446f463e',1,1772614890,X'8466c4675966f89e3480f6521988959a10d7699fbbd0171d5e6649dc963c8cb1');
INSERT INTO staff VALUES('2752b7d693075ffd9a5bade976f287bd','The nurse','nurse',1,1,8192,X'd9c62a8960aa9fdb08b68e655e381a77',X'fcfd8e984b11f1f34f0c7f7a433a8e68b96d968d630818dbe2bc64366ddc63987ac433a4d22238deec817e99e5239f477d313c7fb0caf32512b05956a1711e157440100d0a4a304e',0,0,X'efc0124eb36b1a43b6b04c91919f3d01cbefd426b7278dc1b9b83bf3cad3fa26');
INSERT INTO staff VALUES('a98da6f9b0c57da3d93510cb95a6ca2e','The clinician','clinician',1,1,8192,X'17692781a7672803bf57dfca74c3f930',X'9764a0cf65a369d3dd7b913d698b94ff95672b66455ba32eb22ede484750fbaa1583c803d6c2f0fe63f5f6bca6d57ce226a17c67f49477fd24d27add61fa684f00b06a7f8d009efc',0,0,X'ab8667a2e46298f0f004cbc15109f52b07ebdb8302902fba93d360eb00109722');
INSERT INTO staff VALUES('0be89959abc9731e281d1102aa5ca4fb','The reviewer','reviewer',1,1,8192,X'b200dd11ff6fb486dfbfd12b36b20f2f',X'cbc1ac0e4afcde3982ba00eed682990df093f0d17f26d12f5f4b80ad7d7eb68a0bc1f540eef00e1ae1a42d723c9eaa6de3f3e95d2dff7bd79eb71629fde877a0c30a661b4fe9c25a',0,0,X'77bca96e527da740903599f48fb00d7d02e8c01a5f2ee49c304e24efc00ab10d');
CREATE TABLE signin_failure (
    number integer primary key,
    staff text not null references staff (id),
    at text not null
) strict;
INSERT INTO signin_failure VALUES(1,'e054bf3374fd57152256bea7ff6bdc8e','2026-03-04T09:01:30Z');
CREATE TABLE patient (
    id text primary key,
    person text not null references patient (id),
    revision integer not null unique,
    sealed blob not null
) strict;
INSERT INTO patient VALUES('44c35fdc6928ce9ac57d266530dc3a51','44c35fdc6928ce9ac57d266530dc3a51',1,X'e90e80c06f871f4e2ab237af1109739bbed3018c963c4842da66a38d18c8c4983709098a881fe63c246e194c0165a8d016327114644ba67c2f5be11fd6d74c7147cad6af5001d6e77939b009c0e049e2ed8bbe7789a7593b870374b433392a1310d9538526ce4372caaf849aa7abccdfc972d53d86b9e23a53b2eea85c791888068f6f1b44148feb045083117dc1c856f5eba686f9e1d2c4218be344fc0cc18cad24017f');
INSERT INTO patient VALUES('36438ff3dbbd6791af026e500c6b3e43','44c35fdc6928ce9ac57d266530dc3a51',5,X'cda7b5e3baa3475d53405bda032ddfda7d05c5f3f612dd83d03d8a0dee24521cdd3761336e3be8b01540d8e86d13348b922c56b81aebd696fd6d4bd7333400918b0010a5be221de0ff6a9d7c74b06bed471fe7f44530807ab6e6908d3db79ff1e79f1cccf1bd85e5d846705f06b8ae0d4c92c209defa79715ce9c5ce5c7fec6dc6d5a9bcc6410d4e3109fe82c50f68d852b988328a20c3b5ce6bb53df83c8fde406a');
INSERT INTO patient VALUES('aadb58e3418b0c6ce27f257b05b51ed2','aadb58e3418b0c6ce27f257b05b51ed2',4,X'96957faa13498cdd9474d91f84aceed8b1f0fca805aa15df6176fc2c4fecb1b0aa6bf45d03f438fd6ef51ce12bc3fe8e4ed69873767079dfadc7660f11efe719c59f3936e8915d8f7be12567bee953b6635b000a09b589d1202d465f17e6c32b24d7e80e33cae144893eece526eb07eb305d62df7ddfad38869257672095d78483494247f11f5c27291955b91f551bca0b4bce1fdc4c41fe8a393a4d3d38');
CREATE TABLE patient_version (
    patient text not null references patient (id) on delete cascade,
    revision integer not null,
    author text not null references staff (id),
    at text not null,
    sealed blob not null,
    primary key (patient, revision)
) strict;
INSERT INTO patient_version VALUES('44c35fdc6928ce9ac57d266530dc3a51',1,'e054bf3374fd57152256bea7ff6bdc8e','2026-03-04T09:00:00Z',X'e90e80c06f871f4e2ab237af1109739bbed3018c963c4842da66a38d18c8c4983709098a881fe63c246e194c0165a8d016327114644ba67c2f5be11fd6d74c7147cad6af5001d6e77939b009c0e049e2ed8bbe7789a7593b870374b433392a1310d9538526ce4372caaf849aa7abccdfc972d53d86b9e23a53b2eea85c791888068f6f1b44148feb045083117dc1c856f5eba686f9e1d2c4218be344fc0cc18cad24017f');
INSERT INTO patient_version VALUES('36438ff3dbbd6791af026e500c6b3e43',2,'e054bf3374fd57152256bea7ff6bdc8e','2026-03-04T09:00:00Z',X'cda7b5e3baa3475d53405bda032ddfda7d05c5f3f612dd83d03d8a0dee24521cdd3761336e3be8b01540d8e86d13348b922c56b81aebd696fd6d4bd7333400918b0010a5be221de0ff6a9d7c74b06bed471fe7f44530807ab6e6908d3db79ff1e79f1cccf1bd85e5d846705f06b8ae0d4c92c209defa79715ce9c5ce5c7fec6dc6d5a9bcc6410d4e3109fe82c50f68d852b988328a20c3b5ce6bb53df83c8fde406a');
INSERT INTO patient_version VALUES('aadb58e3418b0c6ce27f257b05b51ed2',3,'e054bf3374fd57152256bea7ff6bdc8e','2026-03-04T09:00:00Z',X'5ebf690896995b528ccafef54b7a59baee8eee441fe2994ae53c1e0b404343a6ebc4edacb063a84f19eb14db6749ba2697903082807931febdbaadd5d2619a92bcbff8a6c5bd36a38b59a2048b47a64a55806dac8eda433a30d2453a359aa737861d9c4222002c41902808c8a27616278d1f592e9bcc854285bad3dfb078a724e3f4bfc482fc611ae660f6f5ccaba476b98ae3ed22013658f68c3d64214a');
INSERT INTO patient_version VALUES('aadb58e3418b0c6ce27f257b05b51ed2',4,'2752b7d693075ffd9a5bade976f287bd','2026-03-04T09:00:00Z',X'96957faa13498cdd9474d91f84aceed8b1f0fca805aa15df6176fc2c4fecb1b0aa6bf45d03f438fd6ef51ce12bc3fe8e4ed69873767079dfadc7660f11efe719c59f3936e8915d8f7be12567bee953b6635b000a09b589d1202d465f17e6c32b24d7e80e33cae144893eece526eb07eb305d62df7ddfad38869257672095d78483494247f11f5c27291955b91f551bca0b4bce1fdc4c41fe8a393a4d3d38');
CREATE TABLE visit (
    id text primary key,
    patient text not null references patient (id),
    date text not null,
    started_at text not null,
    changed_at text not null,
    state text not null check (state in ('intake', 'in_room', 'to_review', 'signed')),
    age integer,
    author text not null references staff (id),
    open_red_signs integer not null,
    events integer not null,
    head blob not null,
    mac blob not null
) strict;
INSERT INTO visit VALUES('f5c44f6f6bb29e699935d5a85c97c49a','44c35fdc6928ce9ac57d266530dc3a51','2025-11-20','2026-03-04T09:00:00Z','2026-03-04T09:01:30Z','signed',64,'2752b7d693075ffd9a5bade976f287bd',1,12,X'b937ffdf766827edbdb44f27af2adc8374cb6cd02ee5c4a8f019d3f11627ad4f',X'854b7d73fe70f719597e155c7e91fb222d40c22553be9ec2bc4342705874a3da');
INSERT INTO visit VALUES('6d322aa0ae1a8c54e88e33ea2be9f21c','36438ff3dbbd6791af026e500c6b3e43','2026-01-15','2026-03-04T09:01:30Z','2026-03-04T09:01:30Z','intake',64,'2752b7d693075ffd9a5bade976f287bd',0,1,X'8e4f70b1673371d7ab758d95b191c554cfd42f8ca5f4659a8e7042dfaa87720d',X'67bb0b3c3e0bd8d01119574eace766bc8be24aa880d3db2dd2b8e6ca144d8a9e');
INSERT INTO visit VALUES('cde97bdc258ed08f804dd195d2788a89','aadb58e3418b0c6ce27f257b05b51ed2','2026-03-04','2026-03-04T09:01:30Z','2026-03-04T09:01:30Z','intake',64,'2752b7d693075ffd9a5bade976f287bd',0,0,X'4efbb91e8b1d11406281acb10b409c19969860cfce9524d86f01f6cc19e75573',X'e2ba99d65bbd347551bf2269280e30495cd335e201f6355a29ee0940ba71be5a');
CREATE TABLE visit_event (
    visit text not null references visit (id),
    number integer not null check (number > 0),
    kind text not null check (kind in ('finding', 'plan', 'note', 'acknowledgement', 'state', 'signature', 'addendum')),
    item text not null,
    side text not null,
    bulk integer not null check (bulk in (0, 1)),
    author text not null references staff (id),
    session text not null,
    at text not null,
    sealed blob not null,
    mac blob not null,
    primary key (visit, number)
) strict;
INSERT INTO visit_event VALUES('f5c44f6f6bb29e699935d5a85c97c49a',1,'finding','reflex.ankle','left',0,'2752b7d693075ffd9a5bade976f287bd','0a54e8cc954de24bbf07c0aa1b32a88a','2026-03-04T09:00:00Z',X'7bb60df9effcf23684e58c27b213091e61a4f20b7eed981d90ccd56ec3eab2736c0110c43fd33ea7ab59731267f8086f863c3d715495629fef4bf4ef460c1b7fa26c9fe75cc936792b',X'59bddcd22fe1840a8ed0c7a9190205dc542f04c7c7c32768332bc93ea118dcbe');
INSERT INTO visit_event VALUES('f5c44f6f6bb29e699935d5a85c97c49a',2,'finding','reflex.ankle','right',1,'2752b7d693075ffd9a5bade976f287bd','0a54e8cc954de24bbf07c0aa1b32a88a','2026-03-04T09:00:00Z',X'77b13363c187042d16d655c7ac6d1a2284224556ed106435ec5d8ac68f86b6ce48283436a99bbdeed04ba360a91d793e8fdc8bb90c058fcfb0009f66004920f98bb6bce14af8406a8a',X'31d5fd42603b4c5617a8b14012100b0c495076cef8071a4c569f324210d082a8');
INSERT INTO visit_event VALUES('f5c44f6f6bb29e699935d5a85c97c49a',3,'finding','measure.slr','left',0,'2752b7d693075ffd9a5bade976f287bd','0a54e8cc954de24bbf07c0aa1b32a88a','2026-03-04T09:00:00Z',X'65c612a17ed16b3ba31bf70f43fba3258f34ad806d4c981bf5cdade0690174afde02980c2c751e2b14ba57b742f5c72590bfcb4af59e754c82a34e6753d29ccb3e0d0d317dc4f07ea6990b5e6d4491ce4c16f6',X'914587d11b40ec2b1be5d0caae6568306591736dd46d4564c00213a9edc15869');
INSERT INTO visit_event VALUES('f5c44f6f6bb29e699935d5a85c97c49a',4,'finding','gait.heel','left',0,'2752b7d693075ffd9a5bade976f287bd','0a54e8cc954de24bbf07c0aa1b32a88a','2026-03-04T09:00:00Z',X'97201e7ab698c5ad44380310c16603d5c102a68fcc27818e209cd2103a057c731ccd2db6f5352647037a120c3e5539980e5e49b8de0546c129e0eb498ec6c64c60944b17abaa0c28bce4af9c',X'19dcd0ac59a9a684287ab0e053f32c070b9891f9efba1095e5c0912d13f98f1b');
INSERT INTO visit_event VALUES('f5c44f6f6bb29e699935d5a85c97c49a',5,'finding','reflex.ankle','left',0,'a98da6f9b0c57da3d93510cb95a6ca2e','94046f137ae65f411ae06c6fb3c0b7ee','2026-03-04T09:01:30Z',X'bee92e3af02e7c9c204403a7c0733e4a1abd44dc0dd41e76dc4b6ccf4e6dbc289ba11f1e8033c29a4a960702c42c482ebcb327437bc62f4fec28c1e955ae0531c76e2a27f1ab1a4389',X'cf4af502cee730c324f9ffc3530084bbd584ba27ae2a39b98162dcd20a0d90fa');
INSERT INTO visit_event VALUES('f5c44f6f6bb29e699935d5a85c97c49a',6,'finding','gait.heel','left',0,'a98da6f9b0c57da3d93510cb95a6ca2e','94046f137ae65f411ae06c6fb3c0b7ee','2026-03-04T09:01:30Z',X'4e7ac036135c646961bb93c0a5d743894ce0a38ada2e766d9c936063b5762246d4d43e62c9f2425deb278b0dd6141c68',X'8c812b689d0d0568fe55d7315c27d245a8248208ddfde7ee42bf872b641e6dfe');
INSERT INTO visit_event VALUES('f5c44f6f6bb29e699935d5a85c97c49a',7,'state','','none',0,'a98da6f9b0c57da3d93510cb95a6ca2e','94046f137ae65f411ae06c6fb3c0b7ee','2026-03-04T09:01:30Z',X'2e674c683b7c9a18996b59ec77d2b0efb60c2a1e5a08ed25f534b482510125ec278aae6e3f1522b9b37074708be9102cde',X'09157d56175574fb276df1fb8069f241f47883b09fad123493b1f514cf624cdf');
INSERT INTO visit_event VALUES('f5c44f6f6bb29e699935d5a85c97c49a',8,'plan','','none',0,'a98da6f9b0c57da3d93510cb95a6ca2e','94046f137ae65f411ae06c6fb3c0b7ee','2026-03-04T09:01:30Z',X'7ef75cbbc0edcdb01583d12357806a2117758aa439fab976b2f410bde64b7acd5f7225dbec22bf15f8ba3e782e7c67cde014',X'b0f15151a82aa3f28164b7d570d5e5cdaa2ef693f146c89f7152b54bab598425');
INSERT INTO visit_event VALUES('f5c44f6f6bb29e699935d5a85c97c49a',9,'note','','none',0,'a98da6f9b0c57da3d93510cb95a6ca2e','94046f137ae65f411ae06c6fb3c0b7ee','2026-03-04T09:01:30Z',X'eef4d3787e940a0fa7046b67fc4c3f068d529aadf70f593480ab6a0f112267442407577762a572fed5a0e185e11370042cf6a662',X'714011786b10367f58352e4c4ccc4da2fa1b0eb06ee71f769f25911c57ed2d8d');
INSERT INTO visit_event VALUES('f5c44f6f6bb29e699935d5a85c97c49a',10,'acknowledgement','','none',0,'a98da6f9b0c57da3d93510cb95a6ca2e','94046f137ae65f411ae06c6fb3c0b7ee','2026-03-04T09:01:30Z',X'1e638d2bfb977f0ae474e2f84585b837e9d28c36d5fc849afe5bf9dab8c2cc08645c4b35e287c745731a1b21d2b75f6f7331647f990778b53c0fdd8af0de2a3191c5b48a',X'a49acebddf6d0110469df103bb53f34a37a61896ef1b4699b8e2647f5053e51a');
INSERT INTO visit_event VALUES('f5c44f6f6bb29e699935d5a85c97c49a',11,'signature','','none',0,'a98da6f9b0c57da3d93510cb95a6ca2e','94046f137ae65f411ae06c6fb3c0b7ee','2026-03-04T09:01:30Z',X'3f6c2a24eeae5b8754c14fc70c3afe1c26acd0a0cae82051209a0db14410c3a153849642fdb2024ec6527d03c85adefb961849',X'f956d7cb62aafa970d9379807bad9cc667cdf8f1c1e4ec789387975928a93aca');
INSERT INTO visit_event VALUES('f5c44f6f6bb29e699935d5a85c97c49a',12,'addendum','','none',0,'a98da6f9b0c57da3d93510cb95a6ca2e','94046f137ae65f411ae06c6fb3c0b7ee','2026-03-04T09:01:30Z',X'719491e2f653bb1da89e0b9418087f79da1513bcad0a6fee28484df6caf7bbc3fdd78ae1b479a29ece09a47e067a027372cc47bd',X'b937ffdf766827edbdb44f27af2adc8374cb6cd02ee5c4a8f019d3f11627ad4f');
INSERT INTO visit_event VALUES('6d322aa0ae1a8c54e88e33ea2be9f21c',1,'finding','reflex.knee','left',0,'2752b7d693075ffd9a5bade976f287bd','0a54e8cc954de24bbf07c0aa1b32a88a','2026-03-04T09:01:30Z',X'e1e28070dcb9e64e645daee007803856d1f38eddf480ebfaddee6405bb9891880d571a0a227d3658c4c8d13a0c10fa46276339eb20515a001333575210eac8da78519a2a7c16a965a3',X'8e4f70b1673371d7ab758d95b191c554cfd42f8ca5f4659a8e7042dfaa87720d');
CREATE TABLE finding (
    visit text not null,
    item text not null,
    side text not null,
    event integer not null,
    primary key (visit, item, side),
    foreign key (visit, event) references visit_event (visit, number)
) strict;
INSERT INTO finding VALUES('f5c44f6f6bb29e699935d5a85c97c49a','reflex.ankle','left',5);
INSERT INTO finding VALUES('f5c44f6f6bb29e699935d5a85c97c49a','reflex.ankle','right',2);
INSERT INTO finding VALUES('f5c44f6f6bb29e699935d5a85c97c49a','measure.slr','left',3);
INSERT INTO finding VALUES('6d322aa0ae1a8c54e88e33ea2be9f21c','reflex.knee','left',1);
CREATE TABLE audit (
    number integer primary key check (number > 0),
    at text not null,
    staff text,
    action text not null,
    subject text not null,
    sealed blob not null,
    mac blob not null
) strict;
INSERT INTO audit VALUES(1,'2026-03-04T09:00:00Z','e054bf3374fd57152256bea7ff6bdc8e','clinic created','',X'68fd5ed9959bb303b6ca23ba10079276ccb3a3ac8d51dc66c66960221bce60a62496315953e190698721f3c94e86e3fab996246d8be8b983ecf8bf715d6373d2c35b',X'4b0ae255cd0dd254dd70ecfdb1c124cea898b7800ceafdc6935411a47df85926');
INSERT INTO audit VALUES(2,'2026-03-04T09:00:00Z','e054bf3374fd57152256bea7ff6bdc8e','signed in','e054bf3374fd57152256bea7ff6bdc8e',X'79d690dc29b4d70164ccc0cc13705a142305a4ea130dc56ff5241a33bdaf0addebdf34a1d04bde46',X'2b266db754454b8f319adcfdfd49a296267314753caeb303a23dadb262d06e78');
INSERT INTO audit VALUES(3,'2026-03-04T09:00:00Z','e054bf3374fd57152256bea7ff6bdc8e','user added','2752b7d693075ffd9a5bade976f287bd',X'0e653cd5889b6c583b505af017febad77f03ee612341194744148cb8e19dc44c4e3f5873adb816e0f61e629b62f18f8b29dd2555ac7de058',X'19cc2336f92ce13ecbf2bf4f89810f77e08b422ef23e3934df0a40db18e08024');
INSERT INTO audit VALUES(4,'2026-03-04T09:00:00Z','2752b7d693075ffd9a5bade976f287bd','signed in','2752b7d693075ffd9a5bade976f287bd',X'8cd0183ba8841c9e178597e01f546c0bf62415cbcdbdae4d6b90d8e3a4680be95859f49f3a2fea52',X'8e02c8cd42672c01af07994ef4c997c300d4ea04281f590c735fc679920dbada');
INSERT INTO audit VALUES(5,'2026-03-04T09:00:00Z','e054bf3374fd57152256bea7ff6bdc8e','user added','a98da6f9b0c57da3d93510cb95a6ca2e',X'cdc713df2401231352cdd2e0639bd5e09a7c5801ad814c2e28c4e3e8977db9db35c17533583355a2c4716c39a2510b870d792304101f83008eee77e6d85fa5f1',X'3b81c5f01c2bf684bccec674ded60217ec587ae5b898f93ea1ea05a56190fcf5');
INSERT INTO audit VALUES(6,'2026-03-04T09:00:00Z','a98da6f9b0c57da3d93510cb95a6ca2e','signed in','a98da6f9b0c57da3d93510cb95a6ca2e',X'0e98251bbdf5dffcb3c03444809b1e26d4f12d97a97b6d47dd4fe6a2d9b07836960f921aca5052bc',X'1473b6480009390b701972ccbc7474f979bc88f9c6436f38082e2432f6c7f086');
INSERT INTO audit VALUES(7,'2026-03-04T09:00:00Z','e054bf3374fd57152256bea7ff6bdc8e','user added','0be89959abc9731e281d1102aa5ca4fb',X'be4fdff8111171e485459c2be161603037a3d137cf3b31724efd9a146d3ef6be03d4607ac02cbf4a1f3f81ca5ab61a4595d6ff19c2b416739eb3a6a3f777',X'ee0a5e9ca642ba4a9d7ae1ddc86f994396830e77c6b60b85a8278c1d7be1de75');
INSERT INTO audit VALUES(8,'2026-03-04T09:00:00Z','0be89959abc9731e281d1102aa5ca4fb','signed in','0be89959abc9731e281d1102aa5ca4fb',X'bc211ec20faf3a37b5a371e7fed055b390bac6b80363992f8f9091e085533474c8b6834ee62c8cbf',X'3a6699576b8a2bce9f7aa43d94371ca004fc6d7fc594f0a49a8f90ddffa3c7c0');
INSERT INTO audit VALUES(9,'2026-03-04T09:01:30Z','a98da6f9b0c57da3d93510cb95a6ca2e','visit signed','f5c44f6f6bb29e699935d5a85c97c49a',X'a865640edc13ce66d5cc7ebfbdb545077fdd3b526b9c49db883cf2c7449970083b8da52a1841ed586199',X'73a7b99f48c218e25bc3cf8b9799b08dd8da272e4f6f8bfd48c80e0f4d4d0f75');
INSERT INTO audit VALUES(10,'2026-03-04T09:01:30Z','a98da6f9b0c57da3d93510cb95a6ca2e','addendum added','f5c44f6f6bb29e699935d5a85c97c49a',X'40de8609f1184db0b93526014cd78a04b64be0973d9ac959ebe04abf733e60badab1dcf4607030a3f2cf',X'9669e8b25a8e525f983bfc4e27061e9a4223ee05e498d4f22b108378eec32f7f');
INSERT INTO audit VALUES(11,'2026-03-04T09:01:30Z','a98da6f9b0c57da3d93510cb95a6ca2e','patients merged','36438ff3dbbd6791af026e500c6b3e43',X'f3b09a8834a6269931343f212baec0c8c027f7e30e4fe25044ca273d722e6293ee1d67b709f9173aead7734d6533146a05162ca50c237db73cec3f4699ce0c06ccb48b9afc84d545',X'8cb339addcb7eb1593847b2ab3dda6eea86e5dc5e8e5cb32085ca2f5098f5e84');
INSERT INTO audit VALUES(12,'2026-03-04T09:01:30Z','e054bf3374fd57152256bea7ff6bdc8e','settings changed','',X'9ec73c4d32292d5479ba606c3d3d566f323a5e8e17b95a9dd509ccc3ce5e1bf41cc0c108dcd96761768db8099004af01c472694294c4283f',X'5bc47019e0a334a1fa92283c1ed62f0a37a1054b8787ab709771016d361f0f23');
CREATE TABLE audit_head (
    one integer primary key check (one = 1),
    number integer not null,
    mac blob not null
) strict;
INSERT INTO audit_head VALUES(1,12,X'd89ab655fe0869b6142910ca0407d1c33a70280278ff4930e5b690bdf0efc10d');
CREATE INDEX patient_person on patient (person);
CREATE INDEX visit_patient on visit (patient);
CREATE INDEX visit_date on visit (date);
CREATE INDEX visit_unsigned on visit (state) where state <> 'signed';
CREATE INDEX visit_event_kind on visit_event (visit, kind);
CREATE TRIGGER visit_event_is_append_only before update on visit_event
begin
    select raise(abort, 'events are never changed');
end;
CREATE TRIGGER audit_is_append_only before update on audit
begin
    select raise(abort, 'the audit is never changed');
end;
CREATE TRIGGER audit_is_kept before delete on audit
begin
    select raise(abort, 'the audit is never shortened');
end;
COMMIT;

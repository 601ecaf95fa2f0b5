-- A clinic of schema 2, every kind of row in it, as its tables stood. The passphrase of each user is the tests'.
pragma application_id = 1381648177;
pragma user_version = 2;
PRAGMA foreign_keys=OFF;
BEGIN TRANSACTION;
CREATE TABLE meta (
    key text primary key,
    value text not null
) strict;
INSERT INTO meta VALUES('schema','2');
INSERT INTO meta VALUES('clinic','e821b8efcc566748287724ebd7081baf');
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
INSERT INTO staff VALUES('ae7c472b9ddbfb106ab4f782ec09e7db','Ada Thornfield','administrator',1,1,8192,X'278e8b7bdbc14856e3b62a5d841e87df',X'5dcb2ed942d5b1b9ab7d1ff45c3084b418f2cad33c85736449e4b2be4c86cfda1bf1b72ae60068deff776558897766778262873196e9b696c777f961403f2f609c5c560a51d46f2e',0,0,X'd57b0226e3ffb435fa7dd38b1438614da6373c18e1ff3a2473382037ce976658');
INSERT INTO staff VALUES('4b3bc2588754c291e4012f50267da760','The nurse','nurse',1,1,8192,X'f358ee1347b69908f8768b3d84282b0a',X'376933224eaad60c50b2a461de2d27b3b7b231d7dc13739b4a0af316b0f46db8ce7ce2c7412d6109efb7961331a9883d8fe5071f75e54d60c546ef5a382e6dfde8860a4e790578c6',0,0,X'c0ef6ee0b9320ce2009658097b6374b222e6b5f787233c051f2214a239857039');
INSERT INTO staff VALUES('ad29208c10b0ea484492802291eca15e','The clinician','clinician',1,1,8192,X'b94b0d63e67ea6dfa480391df87408ef',X'79cae8b4590c5cae150481c835c646c6d114000086d0e1778dae34c6ac644ec7f5a713b2947d7e553a1cb1eaf24c32451757f84f9f1f5f47c4959e68544d8073b7bdce5592a3ba8a',0,0,X'23e8dbbbb3bb694cb7ffc80d8e729866bb1ca111f526dd43fd95595510be80c8');
INSERT INTO staff VALUES('79db437e89aaf8664986a44f03099df7','The reviewer','reviewer',1,1,8192,X'd2ea16e28217d30280d39bbf615e7609',X'85d4157f479735e32fdb72ff334281e1759712903456ce43b558302f130c4835955627a51c2a5b162055620b4c2060cc0f02fd7fee2652963bbbdec991138042b4565397763b1cfa',0,0,X'76250967648337a9e0d49eac25ec80f6e3ba49dd39312b29a01074d5df0e25fd');
CREATE TABLE signin_failure (
    number integer primary key,
    staff text not null references staff (id),
    at text not null
) strict;
CREATE TABLE patient (
    id text primary key,
    person text not null references patient (id),
    revision integer not null unique,
    sealed blob not null
) strict;
INSERT INTO patient VALUES('2dc56ecf103dd85688990c2bcfcb161f','2dc56ecf103dd85688990c2bcfcb161f',4,X'e8bda9124271c96b4fb82c6012101f276f5580c40b1b2b857608a6349b1ea60fdd4cad1d022e95930df6a5c154d6918ce499e5edd80aab6b1d54b589d2ec223b2cb4366acebde122b04d4ba8e57203d89c853084789ae9c7189d9d5d0e6d4bd0b912512c1c90318a932acc72a49c356b153a144b10cf76e52708eb2c1e55678af74948095c524444ff349d9df459d1ed8eb8fa4e80a2763dae594be830f2a8f7af661225c5');
INSERT INTO patient VALUES('87e18235490ecb87740cd20798fd2b65','87e18235490ecb87740cd20798fd2b65',2,X'7b4ae066c6ced530756d476d4e13063c85957fe9ff92026a0ec27dd47c6483d62130bcbc0cbd6a699601818992a8aa6ae932208a2988d39dd502194cb4f4111254248e55d93f064a1924bf65a3eac862270bad154318daedcc4fcd7fd0ea01b10832d55b911b21ae687b4ec7d9fea400a1f5dd7b3a1cb0c83a00d0af6fc62652462166');
INSERT INTO patient VALUES('9f22b389edb8511c1df4efab759bc974','2dc56ecf103dd85688990c2bcfcb161f',5,X'cc4ea6c5286220878d8dc8e428a9af705f86cf3724bf78f2d68fe9189896233c8f870677ce67a7e56220f15980ad9b4ac1a0e666633b2b0839d235102ec8be57ba701b7e88434f53940dd2c10c3a57b6980260cb62c140e6ceb2864b87ec206962472da59bc97dd6a2f3251b98270e6a4171e08186ccb95e5cc9b05061c69b8889322fd276');
CREATE TABLE patient_version (
    patient text not null references patient (id) on delete cascade,
    revision integer not null,
    author text not null references staff (id),
    at text not null,
    sealed blob not null,
    primary key (patient, revision)
) strict;
INSERT INTO patient_version VALUES('2dc56ecf103dd85688990c2bcfcb161f',1,'ae7c472b9ddbfb106ab4f782ec09e7db','2026-03-04T09:01:30Z',X'934fd9874700ce75210e4d3daef10eae58dc30ccd655b18b419436c9c29d8fa71c5458e42b8764f54c47aa3efbb76fcccdd3b4238bb432192b890a07e4d204257fd285f1654f9a32a039a3be2f5cb6d8f1b0c9bbb5f8190fb85673fc97aeb87afd476781943b26d5eeff6990a97a9280eedd7280ce53ab28a80c5ea2b7d190cf569f4f060a8303851540351b56f86b8ba833eeec459d63d1eec897cd193d0647225e405e');
INSERT INTO patient_version VALUES('87e18235490ecb87740cd20798fd2b65',2,'ae7c472b9ddbfb106ab4f782ec09e7db','2026-03-04T09:01:30Z',X'7b4ae066c6ced530756d476d4e13063c85957fe9ff92026a0ec27dd47c6483d62130bcbc0cbd6a699601818992a8aa6ae932208a2988d39dd502194cb4f4111254248e55d93f064a1924bf65a3eac862270bad154318daedcc4fcd7fd0ea01b10832d55b911b21ae687b4ec7d9fea400a1f5dd7b3a1cb0c83a00d0af6fc62652462166');
INSERT INTO patient_version VALUES('9f22b389edb8511c1df4efab759bc974',3,'ae7c472b9ddbfb106ab4f782ec09e7db','2026-03-04T09:01:30Z',X'cc4ea6c5286220878d8dc8e428a9af705f86cf3724bf78f2d68fe9189896233c8f870677ce67a7e56220f15980ad9b4ac1a0e666633b2b0839d235102ec8be57ba701b7e88434f53940dd2c10c3a57b6980260cb62c140e6ceb2864b87ec206962472da59bc97dd6a2f3251b98270e6a4171e08186ccb95e5cc9b05061c69b8889322fd276');
INSERT INTO patient_version VALUES('2dc56ecf103dd85688990c2bcfcb161f',4,'ae7c472b9ddbfb106ab4f782ec09e7db','2026-03-04T09:01:30Z',X'e8bda9124271c96b4fb82c6012101f276f5580c40b1b2b857608a6349b1ea60fdd4cad1d022e95930df6a5c154d6918ce499e5edd80aab6b1d54b589d2ec223b2cb4366acebde122b04d4ba8e57203d89c853084789ae9c7189d9d5d0e6d4bd0b912512c1c90318a932acc72a49c356b153a144b10cf76e52708eb2c1e55678af74948095c524444ff349d9df459d1ed8eb8fa4e80a2763dae594be830f2a8f7af661225c5');
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
INSERT INTO visit VALUES('e24bf94910f9a8a9dc614c7f29d3afdd','2dc56ecf103dd85688990c2bcfcb161f','2025-11-20','2026-03-04T09:01:30Z','2026-03-04T09:01:30Z','signed',64,'ae7c472b9ddbfb106ab4f782ec09e7db',1,12,X'cf1c0b5baf968b82e568768da62027fc253458b249fcd0783fa35e58e90506a4',X'64473f3d7a4e03a4c33f2ea26eb76491cc7825dadaed7608e9480161f6fef158');
INSERT INTO visit VALUES('f4421014961f1a81cf4d7f48c3ca7eb5','9f22b389edb8511c1df4efab759bc974','2026-01-10','2026-03-04T09:01:30Z','2026-03-04T09:01:30Z','intake',64,'ae7c472b9ddbfb106ab4f782ec09e7db',0,1,X'b75f55714c645ab537486764c85529c14f65c7da7f0c02d7c6caa64a9644b5b6',X'41138427aad79c1fc54c2815c4d7508f353890161f62d86db2e307a09bdbdd54');
INSERT INTO visit VALUES('9505b1ab1768267aea0d71d3092ddbc2','87e18235490ecb87740cd20798fd2b65','2026-03-04','2026-03-04T09:01:30Z','2026-03-04T09:01:30Z','in_room',47,'ae7c472b9ddbfb106ab4f782ec09e7db',0,2,X'48a6deb3af9f8dc5aa18d86eeff55558ec2ce3b951ff2b478f8e64abd2a70572',X'27f53d0e32d14291e6252712793749e53cc2fcc29615dd7769025fda95cd53ab');
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
INSERT INTO visit_event VALUES('e24bf94910f9a8a9dc614c7f29d3afdd',1,'finding','gait.heel','left',0,'ae7c472b9ddbfb106ab4f782ec09e7db','7c2ebdb6d811ef318ffaa81b648741d6','2026-03-04T09:01:30Z',X'fe004c25827d9d82540a53548d6d4905a6bba1d6a51f0fe2ed3df6df8ae2645ccb6e9f8493f9decef8a4b34bf793ea3778e4443eb5b6cff2ca1327080112bc9151b005163cc9148ab0e89875',X'9fcc1012ed410787a6ede274f82c93894f7c17032c112ca62533fd0c24f69628');
INSERT INTO visit_event VALUES('e24bf94910f9a8a9dc614c7f29d3afdd',2,'finding','reflex.ankle','left',0,'ae7c472b9ddbfb106ab4f782ec09e7db','7c2ebdb6d811ef318ffaa81b648741d6','2026-03-04T09:01:30Z',X'123d9b289b49dc83328694339a96f4816518fb28f443b9f68ce8b504886358f129344faa718e34ba84d9874fba3e2eb627ed3121b6e755b3913e4efdffbe9f9a1cce820d1de909eafc',X'7737a31658b01d4219b421117dcc65f1fd0eb450fd16d98cb3f956aaa13f26ba');
INSERT INTO visit_event VALUES('e24bf94910f9a8a9dc614c7f29d3afdd',3,'finding','reflex.ankle','right',1,'ae7c472b9ddbfb106ab4f782ec09e7db','7c2ebdb6d811ef318ffaa81b648741d6','2026-03-04T09:01:30Z',X'68a8bb7f04df083e5b7c8164edb149d7a9927d17e89a095d71f9c65bcb391998c624857c261ecdedb0200de113299923e930622981f0a932dbf8d24f73e5b8538f4dc0eaa4d7e2c07a',X'aabf7ec645a37690c12656810525d77d0e09d02228e0d541f45fcdd66fec749a');
INSERT INTO visit_event VALUES('e24bf94910f9a8a9dc614c7f29d3afdd',4,'finding','reflex.ankle','left',0,'ae7c472b9ddbfb106ab4f782ec09e7db','7c2ebdb6d811ef318ffaa81b648741d6','2026-03-04T09:01:30Z',X'63aeddf650dd2a397782a55fe8dbb74cb0c3a0c2735920b710f9c7ba6d18b7372684a7eadfd2c2918f16f2d907b668c37318ad8e8e99ff4fcfe9dc924b477c3e23681f0b031dd095c1',X'ec9a08c5ed93c8e667920f8c77ef3b6c731465956e2b8a3a0685229472b01d70');
INSERT INTO visit_event VALUES('e24bf94910f9a8a9dc614c7f29d3afdd',5,'finding','gait.heel','left',0,'ae7c472b9ddbfb106ab4f782ec09e7db','7c2ebdb6d811ef318ffaa81b648741d6','2026-03-04T09:01:30Z',X'd895c4dd54dc5b2f2a7215d45838d78d2d890372617dfe903e631814042626f0ac570882b0e0b467550faff4843ed0a5',X'fc976e13b012ef697bbfa497cc0ae944be088cae8828b67cc76246454784a31e');
INSERT INTO visit_event VALUES('e24bf94910f9a8a9dc614c7f29d3afdd',6,'finding','measure.slr','left',0,'ae7c472b9ddbfb106ab4f782ec09e7db','7c2ebdb6d811ef318ffaa81b648741d6','2026-03-04T09:01:30Z',X'b834283a796eb4f181ff5239abe9f20b8c2b9e62cd9910a0fa6d15589840cd6422120697e00bbbdd370e6ca49467518dc566990407bb451afe0b69587009ff306899465dd919ed63b4ed23f4c57a5e449bda62',X'e1ef731844519f34061d8b7b6e6b78668a68f3232a4f41e1258c27d786823de4');
INSERT INTO visit_event VALUES('e24bf94910f9a8a9dc614c7f29d3afdd',7,'plan','','none',0,'ae7c472b9ddbfb106ab4f782ec09e7db','7c2ebdb6d811ef318ffaa81b648741d6','2026-03-04T09:01:30Z',X'c3d199b54c5b8eb16d565ec342178f6576f6b9039b00be3a8ab8b10841ed35b5ab264a2f86e4b2a85f573274b7b8ddc96799',X'35259c1dd0ed2121987dd68690763819b5013c70909fd84c51cfd5ac4206e22a');
INSERT INTO visit_event VALUES('e24bf94910f9a8a9dc614c7f29d3afdd',8,'note','','none',0,'ae7c472b9ddbfb106ab4f782ec09e7db','7c2ebdb6d811ef318ffaa81b648741d6','2026-03-04T09:01:30Z',X'6079e26a7c6b646f38391976068564d0d1eb36867ef4206facd581ea7fad24f546c88d0943227bccb7f5fd4bf044bcb1f93562e4',X'01d670a937b3c29091a4ff82f0d15573338c4c03809e7efd2219f969e7cdeaaf');
INSERT INTO visit_event VALUES('e24bf94910f9a8a9dc614c7f29d3afdd',9,'acknowledgement','','none',0,'ae7c472b9ddbfb106ab4f782ec09e7db','7c2ebdb6d811ef318ffaa81b648741d6','2026-03-04T09:01:30Z',X'bc76859748af94f7b2178757081cb512b8b9123e1a355caa1d28dafa8a65537aadcb50c976f6bf5a24a526565ac5abf53ed0d9284831873d1a26e3b8aa0fc3be0b3be24a',X'd992319dd66434a755d609f7270c940527ca8f2a43d15ce5e24e6d6ea13712e1');
INSERT INTO visit_event VALUES('e24bf94910f9a8a9dc614c7f29d3afdd',10,'state','','none',0,'ae7c472b9ddbfb106ab4f782ec09e7db','7c2ebdb6d811ef318ffaa81b648741d6','2026-03-04T09:01:30Z',X'5ada719c3508ee41b8b16019a4e0e3437e94e215ded5f8400bb44cf2a6811c1cac581e05511395264824f88b0023663efc',X'a70f338c00049525b71f272613f1e3ef880d50ee17ed5fef2640e3b0337f710c');
INSERT INTO visit_event VALUES('e24bf94910f9a8a9dc614c7f29d3afdd',11,'signature','','none',0,'ae7c472b9ddbfb106ab4f782ec09e7db','7c2ebdb6d811ef318ffaa81b648741d6','2026-03-04T09:01:30Z',X'50e3568da393c9eacca042af0b43ffa1041b666c49e085ec0efcdc26e4c933c37376c662401bc2b0194e2e392575c1bb1c22d7',X'0345958c591817bad6405889b4c48032214c4e7e26e1e5e290b15f3fd77ac6d0');
INSERT INTO visit_event VALUES('e24bf94910f9a8a9dc614c7f29d3afdd',12,'addendum','','none',0,'ae7c472b9ddbfb106ab4f782ec09e7db','7c2ebdb6d811ef318ffaa81b648741d6','2026-03-04T09:01:30Z',X'dc4450b5b4b474085d421ca0e63d3d38914edb2e53a22bdc240e57103041dad62aafdefad77b87349e13d82287aa23e3e1a657f2',X'cf1c0b5baf968b82e568768da62027fc253458b249fcd0783fa35e58e90506a4');
INSERT INTO visit_event VALUES('f4421014961f1a81cf4d7f48c3ca7eb5',1,'finding','one','left',0,'ae7c472b9ddbfb106ab4f782ec09e7db','7c2ebdb6d811ef318ffaa81b648741d6','2026-03-04T09:01:30Z',X'65273bc1df95987e007c6e5401d84e211104a13790129fd2f2503f820f5ab054fbaa04e1fbe26b676ded4baaa412c99354ccd74b6f17666aadf6a28b200f7a8498c00349e7d7259826',X'b75f55714c645ab537486764c85529c14f65c7da7f0c02d7c6caa64a9644b5b6');
INSERT INTO visit_event VALUES('9505b1ab1768267aea0d71d3092ddbc2',1,'finding','one','left',0,'ae7c472b9ddbfb106ab4f782ec09e7db','7c2ebdb6d811ef318ffaa81b648741d6','2026-03-04T09:01:30Z',X'33a924866691bbd114251854008aa871ce7d2372e32850d53fb4802d0359d39f4b78a97b21a34ffc2c5415e9a7f0d13d4dcb3717b267e7d38cbdae71e76706e8a3eba9238bfd17f82a',X'712237ed610d662606171e7cdc553c9b75bc9be89a8e75942befea85e660977b');
INSERT INTO visit_event VALUES('9505b1ab1768267aea0d71d3092ddbc2',2,'state','','none',0,'ae7c472b9ddbfb106ab4f782ec09e7db','7c2ebdb6d811ef318ffaa81b648741d6','2026-03-04T09:01:30Z',X'1943a4e3dbf311dfad98fc1c3b034fa63cba34c594a8032fd586440803f0bc09c9f279105e9144f4d70fbd20cf8fe9',X'48a6deb3af9f8dc5aa18d86eeff55558ec2ce3b951ff2b478f8e64abd2a70572');
CREATE TABLE finding (
    visit text not null,
    item text not null,
    side text not null,
    event integer not null,
    primary key (visit, item, side),
    foreign key (visit, event) references visit_event (visit, number)
) strict;
INSERT INTO finding VALUES('e24bf94910f9a8a9dc614c7f29d3afdd','reflex.ankle','left',4);
INSERT INTO finding VALUES('e24bf94910f9a8a9dc614c7f29d3afdd','reflex.ankle','right',3);
INSERT INTO finding VALUES('e24bf94910f9a8a9dc614c7f29d3afdd','measure.slr','left',6);
INSERT INTO finding VALUES('f4421014961f1a81cf4d7f48c3ca7eb5','one','left',1);
INSERT INTO finding VALUES('9505b1ab1768267aea0d71d3092ddbc2','one','left',1);
CREATE TABLE audit (
    number integer primary key check (number > 0),
    at text not null,
    staff text,
    action text not null,
    subject text not null,
    sealed blob not null,
    mac blob not null
) strict;
INSERT INTO audit VALUES(1,'2026-03-04T09:00:00Z','ae7c472b9ddbfb106ab4f782ec09e7db','clinic created','',X'dc7d0627c14d11d638ff5a48b96aac4e6758f2c30e004751baee7a6923cd0676f29a29f4bb18fe5c3c4dedb84d9f1966451ad3a453a41f890dcbf6823c73a9843eb5d1915bf69503f2a338b0801e5b7a541d0a1218bd02e9eb546d8ce90ec12765340a9ba1d8a21a75822896179d901f102a2fdaf650c0db13e023190926073a3226f8bbde70e61006d4ba4fb4392f99e40b13dd75facc6372139e92',X'0182cd70327eea09cbb97ca794ddaf74a585a4d14c69bb86cafd4313b1a116ff');
INSERT INTO audit VALUES(2,'2026-03-04T09:00:00Z','ae7c472b9ddbfb106ab4f782ec09e7db','user added','ae7c472b9ddbfb106ab4f782ec09e7db',X'a5a75e8bf7e074d8a56ab57c5e5b6c13fe79118e93872d10e3e4ce65106ce74e085c522ce57890aa6df02143f0bd5d5152cd5b67309f5ec1650d425ad9d4235aef8de58d7bca9757ccf842a86b363083f789f153525b6dae189cf3ea5087681fe6d951e283fde4f5ec65cfbf6ade5279efb5eed9471f6b31a78b28106ae688058da733fb5e88084575c0b82394feeba3db950f72cff0f6a5e03b86cfcd2840b70d58075331c205a8ea416e4ee1a838f6e4710d56a898be075d7e3446b413391f8458cabcee4899871c088a259855ad518dc9bf1187de02537538fb78c028b244550f9b847759caf0d597cfec97eb1655be4fbdf7a1c2076bfdb3842a7b82b9',X'167579596ac38f25a46799c5f3a5847ce130579b6c5935dba1c6f7f265e6d0cb');
INSERT INTO audit VALUES(3,'2026-03-04T09:00:00Z',NULL,'sign-in failed','ae7c472b9ddbfb106ab4f782ec09e7db',X'3cb11a1cfd59da9f70230d03c27951a312507d86c76931275645a924d9aa790fa1c64c2fe3d232871b44f6548242ca0681d5172dc124a87d32',X'64c7a36ff59c7b0ca88743cf4ce0614d999236e583ee979c7e5a5ab9d0718b54');
INSERT INTO audit VALUES(4,'2026-03-04T09:01:30Z','ae7c472b9ddbfb106ab4f782ec09e7db','signed in','ae7c472b9ddbfb106ab4f782ec09e7db',X'a1d723c18c8cf9303489fda66d810cef9644d6038c94a0155c81aa9256e3a13e9d4cf0f57882ecd8c5b09cd081e7778e4d2794670926068868',X'c57d6b244794cec0d997edc1b7fb1ca6945c79c39ac41e0671bd8d138b659bc8');
INSERT INTO audit VALUES(5,'2026-03-04T09:01:30Z','ae7c472b9ddbfb106ab4f782ec09e7db','user added','4b3bc2588754c291e4012f50267da760',X'4a51f7db849793222af1827843bfa511b2603f9ab870276b6c4b753594fe6a0eceaff929a5eefc29d8d36279be10198b28d8b016b678f6f8408756771a823033217bc94a21d54719ce580c4f6b4ef803ba8bb565fe10bd8527437520ffe849411fda18f35820116b4ac64e97c14bbf63ddd8aeef0f09d0ec5e4cba9e255aea82d7c306328163996f21a8669459ab7b8d2eff8908d8a529b7c38fa485bda67fc506da781dfc098fb48183a3083708cecb6933a94ae9be993c2e07c62d280dd53a853d2803ec7339c25ac28249ac474df058221e3acb28398ec29f570af9727f320a13ef480068646c7e1373287d0b59dd4b17',X'7ab6fe9c692fd77922f74008742fb777c4d10e3d14235374e360980e2aa1bedf');
INSERT INTO audit VALUES(6,'2026-03-04T09:01:30Z','ae7c472b9ddbfb106ab4f782ec09e7db','user added','ad29208c10b0ea484492802291eca15e',X'3b1c71ba33ec1a0ab55cad4e51155ed23e11bdbe752f10018f150bef260beb32be38b397888e7e21bfb94e89401639ba59d1f32eacee1be7ff78b61974f5eb2da7a3016165cf6cb03a8fa666882de0ceebd648cb6d6b3ded7b4a943540c921fdce9613c522786ddbc2b76648d61de2deecfb82197c5f6e06a23c4275834931ff37416b1a249fa7683ae4f2132e182761356b7598ee5391fb1be676b55e9789819a226121806a4f3088a7fafdb3e2185f0d2099b487254f8ed09cae96f3544229de31c75dcf3a997f7b8cbab6f148491b1b2a9dca7c1030f7ce6d21d8eff4ac8f553dc03acaf02c107e48694c7ac0cbbb2c7429c703c60ed15741',X'b9252cc851a7e978401140763125f41ae244cea1e19366f0800f20189e175862');
INSERT INTO audit VALUES(7,'2026-03-04T09:01:30Z','ae7c472b9ddbfb106ab4f782ec09e7db','user added','79db437e89aaf8664986a44f03099df7',X'43bc8449ffd5f18af4cb9726f0e51e5ae0561be9600cbfa47cc67601416fb20813493aa4dae0946efe6e990f82f2cf2837aec7f0f8f2cf1f1219890edda8935b29c45cee2d8ef10927737ab50caca299b11cd33213f1adf3d1b651570eba8114a04124dc6940e3ed64b95f74472cffd769e645bea9e19255272102d6af0ec90e513badf329478184df410c15798a8739f09958e1970cb6bfe7a2df77b72c561b53b8733f9780f5d3eac59c921f30dd63cafc0732bfb59eee7b44e186a82adb742b56c818c0be86373494dff6c404f43bb0bbd3e5d1150424d8dd08831ebc6ef0fb5eeecef4c2378a31cf9fc25bf0938b2d03f7d1a21d98b7',X'2f3196340593aff3ab3188bca013f1176e72f1a35f258cfb1716b170d0dff0f8');
INSERT INTO audit VALUES(8,'2026-03-04T09:01:30Z','ae7c472b9ddbfb106ab4f782ec09e7db','settings changed','',X'7d19726b633b33642406c9b96170bdd6b0ec0b28804368632f70753f3d4ef30a4f509ff8cae35872af72f5a68bd0f3e01ccf333d5fc2e3918826573c97bb4610052ffefba444521861',X'87512fe3651e8d479f01db1610abeb0baf2aecbcf34f211f376574283088a5bd');
INSERT INTO audit VALUES(9,'2026-03-04T09:01:30Z','ae7c472b9ddbfb106ab4f782ec09e7db','patient added','2dc56ecf103dd85688990c2bcfcb161f',X'0885700308b60a9dc699bf73e907e003a755dc4781ee9a71ccc87f09df397e4117a1fbe92a622bb0ac5c036d8b2fc334645377702a3347ad2483297c03c2888565a0b6c7fb92c7dd466160943082b0f0e34bf237cb21008181ee1d924e7da271c04396c33845916decf9ea9f8f753b404939d7796644fa45e0b5f2f42386fb98c1ec309cc6ccd04e37548ee53a8871df39',X'bb8f69eeaa1137861dd128601942dc38501a0342568c76fdd4c7a5fdaf4aa9fb');
INSERT INTO audit VALUES(10,'2026-03-04T09:01:30Z','ae7c472b9ddbfb106ab4f782ec09e7db','patient added','87e18235490ecb87740cd20798fd2b65',X'ccce4fe9b97833455b063a65eb7b7468958c12636f1929843ea263988f99cd4023afcb211d9f44c1e1d1ff27340fa50491e80f2193e68ebc15c0523628301b243f43a82bdbfcc1d25dd8cf96a7cbf32eab7f9b766a3645c611e6786463d1b4a67c2e4a15762f897c79d71d3e9b65c439f66ffe7b3dea34cd5511ebffbca822890b7741d82b9f7534c13e6648294233eaf8',X'9c514f01f23053abd1c5296997e8621efb09a4368776b1caf478c9bad9643618');
INSERT INTO audit VALUES(11,'2026-03-04T09:01:30Z','ae7c472b9ddbfb106ab4f782ec09e7db','patient added','9f22b389edb8511c1df4efab759bc974',X'987d9d1ec28c9dc6c3f2b7d05b4beba2b35fda21ffd34fc28b4933d5f81cc9feea0da99276122678f7e9115321ec6e5f1563c8c28c86f44208f169b3bac82d9059b14ab3dc0a809cfcdeea3e6d6f7477ca95edcdf0f2e20e5c7d2c78d6f40832ee7b53d6b90466144640550c9f36abb2493e9b6c027313fbd00b60160a5e2e1cad7197fe070aee3b052f1d4ffd41ad8578',X'da932d1c351c1f16e1ff53b056b23efc7a05adcfe03b2dc89fc2fa96558209a5');
INSERT INTO audit VALUES(12,'2026-03-04T09:01:30Z','ae7c472b9ddbfb106ab4f782ec09e7db','patient changed','2dc56ecf103dd85688990c2bcfcb161f',X'88683ced41c038e75d5d99ab777c9ccc75c92e563340ef1764a961a5a89046d518bc8af763fd72156783356cf0c3d1f79862dab72ad2320e77a1c558290e489315b88d4bf339f3704ba841472a1e8163a8f0189e15d8cb5ee2e39a147a4a4c76be9660c066ba3c642e3b8c498e9cb9391920d3b68c2ac3db0730e5c5c914b804f5e0fa799623f16839fe0e80f23ccb8be8',X'01e178ccf0f846653954cc5a015923904ea31855e974e5edd3902188a372569f');
INSERT INTO audit VALUES(13,'2026-03-04T09:01:30Z','ae7c472b9ddbfb106ab4f782ec09e7db','visit added','e24bf94910f9a8a9dc614c7f29d3afdd',X'a377b4f88567ec2c3de3fb81726135fcc7bb00de25e03e29e50e902603071edce87c54cda4f6464fafb74484863b5ef9e667bcd425f6cceb83b25a1f72ffb0b7f0fdd3e8fc35bfcb285eb2e4afc1ce9f5975ea6b5070d0d5b7',X'b8d4d6e67fc92bd84fa244f5d2164bb2b407bbb82ec59612a17287907a239806');
INSERT INTO audit VALUES(14,'2026-03-04T09:01:30Z','ae7c472b9ddbfb106ab4f782ec09e7db','visit signed','e24bf94910f9a8a9dc614c7f29d3afdd',X'30379e636814394463db3270da6b8fbfd5c260ec95f3b523458174a2335dd7c4b417c1a1005823939d613c74a9af0c497006c4150eecd25cd625b6',X'2da9fdbc61fc1248503cf8e5486f5bd8a27c5361cec6671b347be6141075bec6');
INSERT INTO audit VALUES(15,'2026-03-04T09:01:30Z','ae7c472b9ddbfb106ab4f782ec09e7db','addendum added','e24bf94910f9a8a9dc614c7f29d3afdd',X'2dcafa53666f2e3af2404bcb09d9e398ce82e7eb980c8228a07dec2920c2886864cb006641908ecdf659f3cbf5f5e8f9df9782560f9a712155168a',X'a6d9480bdef3465e50cfb5bc8cbc9bab69556b931d43e256a0bee23f2334b107');
INSERT INTO audit VALUES(16,'2026-03-04T09:01:30Z','ae7c472b9ddbfb106ab4f782ec09e7db','visit added','f4421014961f1a81cf4d7f48c3ca7eb5',X'0674bf3b78b0971749c36ffea7683b5cede7c54485e615878b59034d09b64cf70e951f382d1c9441506bd5e8395a9b301460c66253eed454bb98c1237374c359803926e6a2712ef9e590ac83fc2e9ff4116838623c667e4f6a',X'6bc60f552cf5f6bce2627a0d74a7f0f54fbcb3133fefadb5f5725080973593fd');
INSERT INTO audit VALUES(17,'2026-03-04T09:01:30Z','ae7c472b9ddbfb106ab4f782ec09e7db','patients merged','9f22b389edb8511c1df4efab759bc974',X'5e77bc2ef237d4cc059b8227e097c83092116f54dff048ff093895d0534126ad8f74830eb144026f5d9bbfa31415bd7ed9e622c39568f06ca636671ca458f5acdb5eb36914ba79ebfc668cdcfe92ef075bdac9ff5c9206886c',X'10a1c44845f822c274be0e96d13be8361895f6357f29ca8ea31bf4b9dcf628aa');
INSERT INTO audit VALUES(18,'2026-03-04T09:01:30Z','ae7c472b9ddbfb106ab4f782ec09e7db','visit added','9505b1ab1768267aea0d71d3092ddbc2',X'5aed73203159b07e33a559bc6fae41dabba573d3dd0fc275bc742f649d47b3e9918e1d9dc49c200fc8cd565daa6ff76db3ad29dcc0115706153b105287cfe71b20ad8546a89e6f396ebd2620c47b5e1523ce4ee5f2394f8615',X'63bd7d49024c9d6d3564d3d63f120057a67df95d7475fa0a247b4bdad0fe6b2b');
INSERT INTO audit VALUES(19,'2026-03-04T09:01:30Z','ae7c472b9ddbfb106ab4f782ec09e7db','printed','e24bf94910f9a8a9dc614c7f29d3afdd',X'0b234a2d94009e4de67de463c2c3d743414cc1d9c8b43765319da0179264f239006e0f20d4c618a18d1926575f8b5cad4e6134c2b71c5de950a6a565a78d',X'172748c1207eeb53c96fbe2b27b3ef511042009ad9997cc54424c48cddfea830');
CREATE TABLE audit_head (
    one integer primary key check (one = 1),
    number integer not null,
    mac blob not null
) strict;
INSERT INTO audit_head VALUES(1,19,X'1a809539725ef2515108e5420668edfc74be8736f28ba418407a9aeaf4ccf8b8');
CREATE INDEX patient_person on patient (person);
CREATE INDEX visit_patient on visit (patient);
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
CREATE INDEX visit_newest on visit (date, started_at, id);
COMMIT;

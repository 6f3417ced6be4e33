"""First names, and words with a capital that are no pupil's name.

The first names are those common in schools of the United Kingdom, from many languages. Names that
are everyday words as well (May, Rose, Robin) or that everybody knows from stories (Jack, Alice) are
left out: nobody is found by them.
"""

from __future__ import annotations

from build_tools.sentences.word_lists import word_list

FIRST_NAMES = word_list(
    """
    aaliyah aaron abbie abdul abdullah abigail adeel adele adrian agnieszka ahmed aidan aiden aimee
    aisha aishah akua alan alana albert alejandro aleksander alex alexa alexander alexandra alexis
    alfie alfred alicia alina alison alistair alma amanda amara amelia amelie amina amir amira amit
    amy ana anais anastasia andrea andrew andrzej angela angelina angus anika anil anisa anita
    anjali ann anna annabel annabelle anne annie anouk anthony anton antonia antonio anwar anya
    arabella archie arjun arlo arnav arran asha ashleigh ashley asma astrid ataro ava avi ayaan
    ayesha aylin ayo ayse barbara barnaby bart bartosz beatrice beatrix becca ben benedict benjamin
    bernadette bethan bethany bianca bilal billie bogdan bradley brandon bree brendan bronwen bryn
    bryony caitlin caleb callum calum cameron camilla carl carla carlos carmen caroline carys caspar
    cassie catherine catrin cecilia celia cerys chantelle charles charlie chiara chidi chioma chloe
    chris christina christopher ciara cillian claire clara clare claudia clive clodagh cody colin
    connor conor corey cristina curtis cyrus daisuke damian daniel daniela danielle danny daphne
    darcey darcy darius darren david dawid deborah declan deepa deepak delilah demi denis denise
    derek dewi diana dilys dimitri divya dmitri dominic dominik donald donna dougal douglas duncan
    dylan eamon edith edmund eduardo edward edwin efua eilidh eira eleanor elena eleri eli elias
    elif elijah elin eliot elisa elise elizabeth ella ellen ellie elliot elliott ellis elodie eloise
    elsa elspeth emilia emilie emily emir emma emmanuel emre enid enrico eoin eric erica erik erin
    esme ester esther ethan eva evan evelyn evie ewa ewan eze ezra fabian farah farid faris fatema
    fatima fatou felix fenella fergus filip finlay finley finn fintan fiona flynn francesca francis
    frankie fraser fred freddie frederick freya gabriel gabriela gareth gary gavin gemma geoff
    geoffrey george georgie georgina geraint gerald gethin gillian giovanni giulia glenys gordon
    graham grainne greg gregory greta grzegorz gulsen gurpreet gus gwen gwyneth habiba hadiya hafsa
    haider hakim hamish hamza hana hanna hannah haris harley haroon harriet harris harrison harvey
    hasan hassan hattie hayden hayley heidi helen helena henry hiba hilary hiroshi hollie howard
    huda hugh hugo humaira husna huw iain ian ibrahim idris ieuan ifeoma ignacy igor ikram ilona
    iman imogen imran ines ingrid ioan iona irene irina isaac isabel isabella isabelle isha isher
    isla ismail isobel ivan ivana izzy jackson jacob jacqueline jada jaden jago jake jakub jamal
    james jamie jana jane janek janet jared jason jasper javier jaya jayden jed jeevan jemima jemma
    jenna jennifer jenny jeremy jerome jesse jessica jessie jian jibril jimmy joan joanna jodie joe
    joel johan john johnny jon jonas jonathan jorge jose joseph josephine josh joshua josie juan
    jude judith julia julian julie juliet kacper kai kaitlin kamil kamila karen karim karl karolina
    katarzyna kate katherine kathleen kathryn katia katie katrina kavya kayden kayla kayleigh keeley
    keira keith kelsey kendra kenji kenneth kenny kerry kevin khadija khalid kian kieran kim
    kimberley kirsten kirsty kofi krishna kristina krystian kumar kwabena kwame kyle kyra lachlan
    laila lakshmi lara lars latifah laura lauren lauryn layla leah leanne lee leila lena lenny leo
    leon leonard leroy leslie lewis lexi leyla liam libby lila lilian linda lionel lisa llewelyn
    logan lois lola lorenzo lorna lottie louie louis louisa louise luca lucas lucia lucian lucie
    lucy luis luka lukas luke lydia lyla lynn mabel maciej macy maddie madeleine maeve magda maggie
    mahmoud maia maisie maja malachi malcolm malik mandy manisha manuel marcel marcin marco marcus
    margaret maria mariam marie marina mario marion marissa marjorie marta martha martin martina
    martyna maryam mateo mateusz mathew matthew maureen maxim maximilian maya meera megan mehdi
    mehmet mei melanie melissa mercedes meredith mia michael michaela michal michelle miguel mikolaj
    mila millie mina miranda miriam mitchell mohamed mohammad mohammed moira molly mona monica morag
    morgan morwenna mostafa muhammad musa mustafa myles myra nadia nadine nafisa naima nancy naomi
    natalia natalie natasha nathan nathaniel neil nell nerys ngozi nia niall niamh nicholas nicola
    nicole nigel nikhil nikita nikola nina nisha noel nora norah norman nour olaf oleksandr olena
    olga oliver olivia ollie olu oluwaseun omar omari oona orla oscar osman otis owen pablo padraig
    paige pamela paolo parveen pascal patricia patrick paul paula pauline pawel pedro perry petra
    philip philippa phoebe pierre piotr pippa polly prakash preeti priya quinn rachael rachel radek
    rafael rafal rafi raheem rahim rahul raj rajesh ralph ramesh rana rania rashid raul ravi raymond
    rebecca reece reggie rehan reuben rhian rhiannon rhodri rhona rhys ricardo richard rishi rita
    riya rohan roisin romy ronan ronnie rory rosalind rosanna rosie roxanne roza ruairi rudi rufus
    rukhsana rupert russell ruth ryan sabina sabrina sadia sadie saeed safa safiya sahil saima saira
    salim salma salman sam samantha samir samira samuel sana sandra sanjay sara sarah sasha saskia
    sean sebastian selena selin senan serena sergei seth shabana shahid shane shanice shannon sharon
    shauna sheila shirley shona shreya sian sidra sienna simon simone sinead siobhan sofia sofya
    solomon sonia sonya sophia sophie spencer stanislaw stefan stella stephanie stephen steve steven
    stewart stuart sunil suraj susan susie suzanne sven sybil sylvia szymon tabitha tahir talia
    tamara tamsin tania tanisha tanya tara tariq tasha temi terence teresa tess tessa thea theo
    theodore theresa thomas tiana tiffany tilly tim timothy tobias toby todd tom tomasz tommy toni
    tony tracey tracy trevor tristan tyler tyrone ulrich uma usman valentina valerie vanessa varun
    vera verity veronica vihaan vijay vikram viktor vincent vivian viviana wahid wayne wei wendell
    wesley wiktor wiktoria wilfred william winifred winston wojciech xander xavier yahya yan yara
    yasin yasmin yasmine yousef yuki yusuf yvette yvonne zac zach zachary zahra zain zainab zak
    zakariya zara zayn zeinab zelda zenab zeynep zoe zofia zoya zubair zuzanna
    """
)

NO_NAMES = word_list(
    """
    africa african aladdin alice amazon america american anansi antarctica apollo april arabic
    arctic ariel artemis arthur asia aslan athena atlantic august australia autumn badger bbc
    belfast bengali beowulf bo britain british caliban cardiff caribbean carnival celtic charlotte
    chinese christmas cinderella class crusoe cyclops daedalus dance december diwali dorothy dracula
    dumpty early earth easter edinburgh eeyore eid elmer england english europe evens february fifth
    first foundation fours fourth frankenstein french friday ganesh ganesha german god goldilocks
    great greek grendel gretel group gruffalo guinevere gulliver hades halloween hamlet hansel
    hanukkah hanuman heracles hercules hermes hogwarts holi horner hubbard humpty hydra icarus ict
    indian ireland irish italian jack january japanese jill judy july june jupiter key king kingdom
    ks laban lancelot lear lesson loki london lord macbeth macdonald march marian mars matilda max
    may medusa mercury merlin minotaur mole monday moon muffet mulan narnia national neptune nile
    noah norse northern november oberon october odds odin odysseus ofsted ok ones pacific paddington
    pandora part partner passover pe peep pegasus penelope persephone perseus peter phoenix piglet
    pinocchio pluto polish pooh poseidon primary prince princess prospero puck punch punjabi queen
    rama ramadan rapunzel ratty ravana reception robin roman romans romeo rosie row rudolph
    rumpelstiltskin santa saturday saturn saxon saxons scheherazade scotland scottish scrooge second
    secondary section send september severn sinbad sita sixth spanish special sports spring stage
    summer sun sunday thames theseus third thor threes thumbelina thursday tigger tinkerbell titania
    toad tolly tudor tudors tuesday tv twos uk ukrainian ulysses united uranus urdu usa vaisakhi
    venus victorian victorians viking vikings wales wednesday welsh wendy winter year years zeus
    """
)
"""Words with a capital that name no pupil: days, places, peoples, people of stories."""

TITLES = (
    "Mr",
    "Mrs",
    "Ms",
    "Miss",
    "Mx",
    "Dr",
    "Sir",
    "Coach",
    "Professor",
    "Prof",
    "Rev",
    "Nurse",
)
STORY_SURNAMES = word_list(
    "fox wolf bear rabbit mouse toad badger frog owl hare duck pig moon sun wind rain tumble punch "
    "twit muffet bun tiggy-winkle mcgregor gum men snow sneeze bump tickle goose hen crab"
)
"""After a title, these name somebody in a story."""

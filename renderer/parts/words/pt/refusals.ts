import type { refusals as french } from '../fr/refusals.ts';

/** What the service does not do, by the code of its refusal. */
export const refusals: typeof french = {
  otherXml: 'O ficheiro é XML de um tipo que não se lê. Peça GroundWaterML 2 ou tabelas.',
  otherJson:
    'O ficheiro é JSON de um tipo que não se lê. Escreva-o em listas de linhas simples ou em tabelas (CSV, XLSX), e diga o que as colunas significam.',
  exportNotWritten:
    'A pasta não pôde ser escrita. Arranje espaço no disco, ou veja quem pode lá escrever.',
  tooManyExported:
    'Os furos são demasiados para saírem de uma vez. Escolha menos pelos filtros, ou escreva-os pela linha de comandos.',
  gwmlNoWells: 'O documento GroundWaterML não tem poço nem furo; nada mais dele se lê.',
  xmlBroken: 'O ficheiro não é XML inteiro. Peça-o de novo.',
  xmlDoctype:
    'O ficheiro traz um tipo de documento próprio (DOCTYPE), que faz mais do que dar nome a textos curtos e não se lê. Peça o ficheiro sem ele.',
  ags3: 'O ficheiro é AGS 3, e só AGS 4 se lê. Peça-o em AGS 4, ou guarde os seus grupos em tabelas (CSV, XLSX) e diga o que as suas colunas querem dizer.',
  agsNoHoles: 'O ficheiro AGS não tem nenhum furo. Peça um ficheiro com o grupo LOCA.',
  geoJsonBroken: 'O ficheiro não é JSON inteiro. Escreva-o de novo.',
  geoJsonGrid:
    'O ficheiro indica um sistema de coordenadas próprio. Converta-o para graus WGS 84 e leia-o de novo.',
  noSuchIssue: 'O arquivo não tem este documento. Escolha um dos que lista.',
  staleRevision: 'O furo já tem uma revisão mais recente. Emita o documento dessa.',
  notTheSamePaper:
    'O que foi assinado não é o documento que o arquivo guarda. Abra outra vez o documento e assine esse.',
  notKept:
    'O certificado não pôde ser guardado. Liberte espaço no disco, ou veja quem lá pode escrever, e tente de novo.',
  noSuchIdentity:
    'Este certificado não está neste computador. Crie um, ou traga o seu próprio ficheiro.',
  unrevised:
    'Foi escrito algo que ainda não está em nenhuma revisão. Faça primeiro uma revisão e emita depois o documento.',
  unexplained:
    'Há observações das mais graves que não foram corrigidas nem explicadas. Corrija o registo, ou escreva junto da observação porque deve ficar; depois emita o documento.',
  backupFailed:
    'A cópia de segurança não pôde ser lida de volta e não foi guardada. Veja se o disco está em bom estado e tem espaço.',
  noSuchBackup: 'Essa cópia de segurança não está na sua pasta. Escolha uma da lista.',
  newerBackup:
    'Essa cópia vem de uma versão mais recente do programa. Instale-a para a repor; o arquivo ficou como estava.',
  brokenBackup:
    'Essa cópia não está intacta: uma revisão já não é a que foi guardada. O arquivo ficou como estava.',
  fileExists: 'Já existe um ficheiro com esse nome. Escolha um que ainda não exista.',
  bringing:
    'Estão a entrar furos no arquivo. Nada foi guardado; tente de novo quando acabar, ou pare a entrada.',
  stopped: 'Parou: nada entrou no arquivo, e tudo está como antes.',
  typedSince:
    'Num dos furos foi escrito algo que não está em nenhuma revisão. Abra-o e guarde-o primeiro. Nada foi mudado.',
  wellInBin: 'Um dos furos está no lixo. Recupere-o, ou esvazie primeiro o lixo. Nada foi mudado.',
  nothingFound:
    'Nenhum furo pôde ser encontrado nesse ficheiro. Procure uma cópia de segurança, ou outra cópia do ficheiro.',
  sameArchive: 'É o arquivo que está aberto. Escolha outro.',
  newerArchive:
    'Esse arquivo vem de uma versão mais recente do programa. Instale-a para o juntar a este; nada foi alterado.',
  noSuchStep: 'Este furo já não espera por uma escolha. Veja de novo o arquivo.',
  badArguments:
    'O programa não percebeu o que a página lhe enviou. Nada foi feito. Carregue a página de novo e tente outra vez.',
  badBox:
    'A caixa do selo não serve: tem de estar numa página do ficheiro e não passar de 120 mm por 60 mm.',
  badCopy: 'A cópia para imprimir não é uma imagem JPEG. Acrescente o ficheiro mais uma vez.',
  brokenBefore:
    'Nada foi selado: os selos que o ficheiro já tem não estão intactos. Recomece com o ficheiro tal como foi emitido.',
  busy: 'Outro programa está a escrever no arquivo. Tente de novo quando acabar; nada foi guardado.',
  cannotOpen: 'O arquivo não pode ser aberto. Veja se a pasta existe e se pode escrever nela.',
  changedFile:
    'Este ficheiro já não é o que foi guardado: foi alterado fora do programa. Recupere-o de uma cópia de segurança.',
  damaged:
    'O arquivo está danificado. Ficou como estava. Ponha uma cópia de parte e abra o ficheiro mais recente da pasta das cópias de segurança, ao lado dele.',
  defect:
    'O programa falhou, por culpa própria. O que se mostrava como estando no disco está guardado. Tente de novo; se voltar a falhar, feche o Borefolio e abra-o outra vez.',
  diskFull: 'O disco está cheio: nada foi guardado. Arranje espaço e guarde de novo.',
  diskTrouble: 'O disco deu um erro: nada foi guardado. Veja se o disco ainda está ligado.',
  earlyCertificate: 'O certificado ainda não é válido. Verifique a data deste computador.',
  expiredCertificate:
    'O certificado já não é válido. Crie uma nova identidade, ou peça um novo certificado.',
  foreignKey:
    'A identidade contém um tipo de chave com que aqui não se fazem selos. Servem RSA de 2048 bits ou mais, ou ECDSA numa curva do NIST.',
  missingCertificate:
    'O ficheiro não contém nenhum certificado que pertença à sua chave: um selo não poderia dizer de quem é. Escolha o ficheiro que contém os dois.',
  missingKey:
    'O ficheiro contém um certificado sem a sua chave: nada se pode assinar com ele. Escolha o ficheiro que contém os dois.',
  noArchive: 'Nenhum arquivo está aberto. Abra um no menu Ficheiro.',
  noFile: 'Esse arquivo não existe. Verifique o nome e a pasta.',
  noFolder: 'Essa pasta não existe. Crie-a primeiro.',
  noName: 'Um selo diz quem assina: indique um nome.',
  noPrinting:
    'Esta janela não imprime por si. Abra o PDF no navegador e imprima-o em tamanho real.',
  noSuchFile:
    'O arquivo não contém este ficheiro. Acrescente-o de novo, ou procure-o no arquivo de onde veio a ficha.',
  noSuchPage: 'O documento não tem essa página. Escolha uma que ele tenha.',
  noSuchPrinter: 'Este computador não tem essa impressora. Escolha outra.',
  noSuchRevision: 'O furo não tem essa revisão. Escolha uma das que o histórico mostra.',
  noSuchWell: 'O arquivo não contém esse furo. Procure-o na lista de furos.',
  notAnArchive:
    'Este ficheiro é a base de dados de outro programa. Escolha um ficheiro feito pelo Borefolio.',
  notAnIdentity:
    'O ficheiro não contém nenhuma identidade que se possa ler. Escolha o ficheiro feito para quem assina, ou um ficheiro PKCS#12 (.p12, .pfx).',
  notAPdf: 'Só se imprime um PDF. Faça o documento de novo.',
  notDegrees:
    'O ficheiro contém posições que não estão em graus de longitude e latitude. Exporte-o de novo em WGS 84 (EPSG:4326).',
  notGeoJson: 'O ficheiro não é GeoJSON bem formado. Exporte-o de novo como GeoJSON.',
  nothingToDraw:
    'O ficheiro não contém nenhum contorno nem nenhuma linha. Escolha um ficheiro GeoJSON de limites, estradas ou rios.',
  nothingToPrint: 'Nenhum furo foi escolhido. Escolha pelo menos um, depois imprima.',
  notJson: 'O ficheiro não é JSON, ou não está inteiro. Escolha um ficheiro inteiro.',
  notSealable:
    'Este ficheiro não está disposto de modo a receber um selo. Sele um PDF escrito pelo Borefolio, tal como foi escrito.',
  notThePage: 'Só a página do Borefolio pode pedir isso. Use a janela que o Borefolio abriu.',
  noViewer: 'Nenhum programa deste computador abriu o PDF. Instale um, ou exporte o PDF.',
  oldAndProtected:
    'Este arquivo vem de uma versão mais antiga e tem de ser atualizado, mas está protegido contra escrita. Copie-o para onde possa escrever e abra a cópia.',
  oldCipher:
    'O ficheiro está fechado de um modo ultrapassado, que aqui não se lê. Mande o programa que o fez escrevê-lo de novo com AES-256.',
  otherWell:
    'A ficha é de outro furo que não o que está aberto. Abra esse furo, ou reponha o identificador.',
  printerRefused: 'A impressora não recebeu o PDF. Verifique que está ligada e tente de novo.',
  readOnly:
    'Este arquivo pode ser lido e impresso, mas não alterado: está protegido contra escrita, ou vem de uma versão mais recente do Borefolio. Copie-o para onde possa escrever, ou instale a nova versão.',
  recordTooNew:
    'Esta ficha foi feita por uma versão mais recente do Borefolio. Instale a nova versão para a abrir.',
  shortPassphrase:
    'A frase-passe é demasiado curta: pelo menos 8 letras. Algumas palavras seguidas são fáceis de lembrar.',
  staleEdit:
    'Já existe uma alteração mais recente, feita noutra janela. Nada foi guardado. Tome-a primeiro em conta.',
  tooLarge:
    'É grande de mais. Reduza a imagem, simplifique os contornos ou recorte o ficheiro, e tente de novo.',
  tooManyBackdrops: 'O mapa já tem todos os fundos que pode ter. Retire um deles primeiro.',
  tooManyPages: 'Um ficheiro para imprimir tem 250 páginas, no máximo. Escolha menos furos.',
  unknownCall:
    'O programa não conhece este pedido da página. Carregue a página de novo e tente outra vez.',
  unknownKind:
    'Este ficheiro não é uma imagem JPEG, PNG ou WebP nem um PDF. Guarde-o numa destas formas e acrescente-o de novo.',
  unreachable: 'O programa não responde. Deixe esta página aberta e inicie o Borefolio de novo.',
  unreadable: 'A ficha não pode ser lida. Volte a uma revisão anterior.',
  wellExists:
    'O arquivo já contém um furo com este identificador. Abra-o, ou tire o identificador da ficha para fazer dela outro furo.',
  practiceUnknown:
    'Esta regra de boa prática, ou aquela em que se baseia, não está aqui. Escolha outra, ou acrescente a que falta.',
  practiceRound:
    'Esta regra de boa prática baseia-se em si mesma por um desvio. Mude aquela em que se baseia.',
  practiceIncomplete:
    'Falta a esta regra de boa prática um valor ou a sua fonte. Baseie-a numa que o tenha, ou acrescente-o.',
  templateUnread:
    'Este ficheiro ainda não é um modelo de papel, ou um logótipo não se abre. Corrija-o e tente de novo.',
  noSuchTemplate: 'O arquivo já não tem este modelo de papel. Escolha um da lista.',
  tooManyTemplates: 'O arquivo já tem todos os modelos de papel que pode ter. Retire um primeiro.',
  practiceUnread:
    'Este ficheiro ainda não é uma regra de boa prática inteira. Use um ficheiro escrito por este programa, ou corrija-o segundo docs/practices.md.',
  practiceShipped:
    'Esta regra de boa prática vem com o programa e fica como está. Dê outro identificador à sua e baseie-a naquela.',
  practiceInUse: 'Outra regra de boa prática baseia-se nesta. Baseie-a primeiro noutra.',
  guidelinesUnknown:
    'Este conjunto de valores-guia, ou aquele em que se baseia, não está cá. Escolha outro, ou junte o que falta.',
  guidelinesRound:
    'Este conjunto de valores-guia baseia-se em si próprio por um desvio. Mude aquele em que se baseia.',
  guidelinesIncomplete:
    'Falta a este conjunto de valores-guia um nome, uma unidade ou uma fonte. Baseie-o noutro que os tenha, ou junte-os.',
  guidelinesUnread:
    'Este ficheiro ainda não é um conjunto de valores-guia inteiro. Corrija-o segundo docs/water-quality.md, ou use outro.',
  guidelinesShipped:
    'Este conjunto de valores-guia vem com o programa e fica como está. Dê outro identificador ao seu e baseie-o naquele.',
  guidelinesInUse: 'Outro conjunto de valores-guia baseia-se neste. Baseie-o primeiro noutro.',
  wrongPassphrase:
    'A frase-passe não abre esta identidade. Verifique as maiúsculas e a língua do teclado, e tente de novo.',
  notWorkbook:
    'Este ficheiro não é um livro de cálculo inteiro. Abra-o numa folha de cálculo e grave-o de novo em XLSX.',
  workbookTooLarge:
    'Desdobrado, este livro de cálculo ocuparia demasiado e não foi aberto. Grave a folha pretendida num ficheiro próprio.',
  binderStopped:
    'A pasta foi interrompida. O que está feito fica guardado: iniciada de novo, continua dali.',
  binderRuns: 'Outra pasta está a ser feita. Espere que acabe, ou interrompa-a.',
  noWellsToBind: 'Nenhum furo corresponde à escolha. Escolha outros e reúna de novo.',
  noSuchBinder:
    'O arquivo não guarda nenhuma pasta com esse nome. Escolha uma da lista, ou guarde uma nova.',
  noBinding:
    'Esta janela não pode fazer pastas. Abra o arquivo com o programa ou pela linha de comandos.',
  noImport: 'Nenhum ficheiro está aberto para importar. Escolha-os de novo.',
  badMapping:
    'Esta correspondência de colunas não está completa. Escolha uma coluna para cada campo necessário.',
};

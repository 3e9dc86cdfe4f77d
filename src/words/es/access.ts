import type { access as english } from '../en/access.ts';

export const access: Readonly<Record<keyof typeof english, string>> = {
  'access.yard.lead': 'En el orden del agua y después las partes secas. Dice lo que dibuja la imagen, y nada más.',
  'access.yard.go': '{n} {n:cosa|cosas} por hacer',
  'access.title': 'Acceso para todos',
  'access.aim':
    'Underlawn busca cumplir el nivel AA de las Pautas de Accesibilidad para el Contenido Web (WCAG) 2.2. Un programa comprueba cada pantalla. Todavía no lo ha probado nadie que use a diario un lector de pantalla; por eso decimos que cumple en parte.',
  'access.keys': 'Con el teclado',
  'access.keys.tab': 'Todo funciona con Tab, Mayús + Tab, flechas, Intro, Espacio y Escape.',
  'access.keys.skip': 'El primer Tab ofrece saltar la barra; en un aviso lleva a la parte que se tiene a mano.',
  'access.keys.arrows':
    'Las partes son una sola parada, y la imagen también: las flechas van de una a otra. Igual los bornes bajo un medidor.',
  'access.keys.space':
    'Espacio para el reloj o lo pone en marcha solo cuando ningún control tiene el foco. No hay otras teclas sueltas.',
  'access.reader': 'Con un lector de pantalla',
  'access.reader.words':
    'El patio se puede tener en palabras en vez de la imagen: las partes en orden, qué se sabe de cada una y desde cuándo.',
  'access.reader.news': 'Lo que pasa se dice una vez. Mientras el reloj corre deprisa, solo se dice lo último.',
  'access.reader.lists': 'Donde se señala en una imagen, una lista al lado pregunta lo mismo.',
  'access.eyes': 'Para la vista y las manos',
  'access.eyes.zoom': 'Se puede ampliar hasta que la ventana quede como un teléfono, sin moverla de lado.',
  'access.eyes.colour': 'Nada se dice solo con color. Los blancos miden 24 píxeles o más de ancho y de alto.',
  'access.eyes.drag': 'Nada hay que arrastrar: lo que se arrastra tiene también botones, casillas o teclas.',
  'access.ears': 'Para el oído',
  'access.ears.captions': 'Cada sonido está en palabras sobre la imagen, con el sonido puesto o no.',
  'access.calm': 'Para la calma',
  'access.calm.still': 'Un botón en cada imagen la deja fija. Si su sistema pide menos movimiento, se respeta.',
  'access.calm.flash': 'Nada destella; lo que late lo hace menos de una vez por segundo.',
  'access.calm.time':
    'El reloj de un aviso se puede parar siempre. Los ejercicios y el examen van también sin reloj, y el examen da más tiempo cuando se pide.',
  'access.not': 'Lo que aún no basta',
  'access.not.people': 'Lo probó un programa, no personas con discapacidad.',
  'access.not.picture': 'Formas y tonos de la imagen, como el color del agua, se dicen solo después de haberlos leído.',
  'access.not.canvas': 'La imagen misma no sigue el alto contraste ni el texto más grande. Las palabras al lado sí.',
  'access.not.drills':
    'Algunas figuras de los ejercicios se describen con menos detalle del que se dibuja, para no dar la respuesta.',
  'access.not.hum':
    'Un zumbido más grave o más agudo que de costumbre se dice en palabras solo cuando se escucha adrede.',
  'access.tell': '¿Algo le estorba?',
  'access.tell.how':
    'Dígaselo a quien le dio Underlawn o cuida esta copia: en qué pantalla, con qué navegador y qué ayuda, y qué quería hacer.',
};
